using System.Text;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Api;

/// <summary>Looks at names and labels as typed before they are kept.</summary>
internal static class NameCheck
{
    /// <summary>What is wrong with a name; nothing where it may be kept.</summary>
    public static SharingProblem? Look(string? name) => name is null || (name.Length <= SharingLimits.NameCharacters && name.EnumerateRunes().All(rune => rune != Rune.ReplacementChar && !Rune.IsControl(rune)))
        ? null
        : Problems.Malformed($"A name has at most {SharingLimits.NameCharacters} characters, all in one line.");
}
