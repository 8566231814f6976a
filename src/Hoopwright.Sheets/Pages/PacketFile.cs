using System.Collections.Immutable;

namespace Hoopwright.Sheets.Pages;

/// <summary>A file of the packet.</summary>
/// <param name="Name">Its path in the folder, with forward slashes.</param>
/// <param name="Bytes">What it holds.</param>
public sealed record PacketFile(string Name, ImmutableArray<byte> Bytes)
{
    /// <summary>What it is, in a line, for the list of files.</summary>
    public string Says { get; init; } = "";
}
