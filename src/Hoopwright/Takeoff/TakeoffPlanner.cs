using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.Takeoff;

/// <summary>Counts what a tunnel is made of.</summary>
public static class TakeoffPlanner
{
    /// <summary>Counts it. Every member is in exactly one line of lengths to cut. Never throws for a tunnel.</summary>
    /// <param name="tunnel">The tunnel as laid out.</param>
    /// <param name="cover">Its cover.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static TakeoffList Plan(Tunnel tunnel, CoverPlan cover, Answers answers)
    {
        var draft = new TakeoffDraft();
        SiteTakeoff.Add(draft, tunnel);
        MemberTakeoff.Add(draft, tunnel);
        GroundTakeoff.Add(draft, tunnel, answers);
        FrameTakeoff.Add(draft, tunnel);
        EndTakeoff.Add(draft, tunnel);
        DoorTakeoff.Add(draft, tunnel);
        SideTakeoff.Add(draft, tunnel);
        CoverTakeoff.Add(draft, tunnel, cover, answers);
        return draft.List();
    }
}
