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
        Frame(draft, tunnel, answers);
        CoverTakeoff.Add(draft, tunnel, cover, answers);
        return draft.List();
    }

    /// <summary>Counts all but the film and what holds it.</summary>
    internal static void Frame(TakeoffDraft draft, Tunnel tunnel, Answers answers)
    {
        var fasteners = new FastenerAnswers(tunnel.Plan, answers);
        SiteTakeoff.Add(draft, tunnel);
        MemberTakeoff.Add(draft, tunnel, fasteners);
        GroundTakeoff.Add(draft, tunnel, answers, fasteners);
        FrameTakeoff.Add(draft, tunnel, fasteners);
        EndTakeoff.Add(draft, tunnel, fasteners);
        DoorTakeoff.Add(draft, tunnel, fasteners);
        SideTakeoff.Add(draft, tunnel, fasteners);
    }
}
