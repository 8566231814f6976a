using System.Collections.Immutable;

namespace Hoopwright.SiteBooks;

/// <summary>A value of a field that no other known one has taken the place of.</summary>
/// <param name="Id">Whose it is: the identity of the edit, or one made from the value itself where it was typed into the file.</param>
/// <param name="Value">Compact JSON; null where the field was taken out.</param>
/// <param name="By">Who wrote it; null where that is not known.</param>
/// <param name="Device">On what; null where that is not known.</param>
/// <param name="After">The identities of all that it has taken the place of.</param>
internal sealed record PlanHead(string Id, string? Value, string? By, string? Device, ImmutableSortedSet<string> After)
{
    /// <summary>What makes two heads one.</summary>
    public (string Id, string? Value, string? By, string? Device) Self => (Id, Value, By, Device);

    /// <summary>True when the file's own text says as much, so that nothing need be written about it.</summary>
    public bool SpeaksForItself => After.IsEmpty && Id.StartsWith(FieldHeads.Typed, StringComparison.Ordinal);
}
