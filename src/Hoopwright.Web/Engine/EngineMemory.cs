using Hoopwright.Cutting;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Web.Engine;

/// <summary>What one thread of the engine keeps between two questions. Not for use by several threads at once.</summary>
internal sealed class EngineMemory
{
    /// <summary>Jobs of cutting: most changes leave most of them as they were.</summary>
    public CutMemory Cuts { get; } = new();

    /// <summary>The plan that was read last: a look, its drawing and the long work mostly ask about the same text.</summary>
    public (string Document, PlanReading Reading)? Read { get; set; }

    /// <summary>The plan that was worked out last: why, packet and comparison mostly ask about the very plan that is shown.</summary>
    public (string Document, PlannedTunnel Planned)? Last { get; set; }

    /// <summary>The plan that was looked at last, as far as that goes.</summary>
    public (string Document, PlannedTunnel Planned)? Glanced { get; set; }
}
