using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>The sentences of putting the film on, in the language of a crew.</summary>
/// <param name="planned">A plan worked out to its orders.</param>
/// <param name="tunnel">Its tunnel.</param>
/// <param name="words">The language.</param>
public sealed class CoverSheet(PlannedTunnel planned, Tunnel tunnel, CrewWords words)
{
    private readonly PacketTableMaker make = new(planned, tunnel, words);

    /// <summary>A sentence; names in it too.</summary>
    public string Said(Phrase phrase) => make.Phrased(phrase);

    /// <summary>What a step uses up.</summary>
    public string Uses(FasteningStep step) => make.Uses(step.Materials);
}
