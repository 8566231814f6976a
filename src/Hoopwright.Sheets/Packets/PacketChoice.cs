using System.Collections.Immutable;
using Hoopwright.Sheets.Dxf;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>What goes into a packet.</summary>
public sealed record PacketChoice
{
    /// <summary>Only these kinds of file; empty for all.</summary>
    public ImmutableHashSet<PacketForm> Only { get; init; } = [];

    /// <summary>The language of crew sheets to go with it, one of <see cref="CrewWords.Languages"/>; null for none.</summary>
    public string? Crew { get; init; }

    /// <summary>When the film can be pulled and what a year inside is like, by a weather file; null for none.</summary>
    public CoverWeather? Weather { get; init; }

    /// <summary>The paper of the drawings, such as tabloid or A3; that of the pages when null.</summary>
    public Paper? DrawnOn { get; init; }

    /// <summary>Which revision it is, as the title strips print it; null for none.</summary>
    public string? Revision { get; init; }

    /// <summary>How dimensions go into DXF files.</summary>
    public DxfDimensions Dimensions { get; init; }

    /// <summary>Files of an earlier packet that lie where this one goes, by their paths in the folder; the list of files tells those that stay.</summary>
    public ImmutableArray<string> Earlier { get; init; } = [];

    /// <summary>Those of them that stay, as their kind is not written now.</summary>
    public ImmutableArray<string> Staying => [.. Earlier.Where(path => PacketNames.FormOf(path) is { } form && !Has(form))];

    /// <summary>Whether a kind of file is wanted.</summary>
    internal bool Has(PacketForm form) => Only.IsEmpty || Only.Contains(form);
}
