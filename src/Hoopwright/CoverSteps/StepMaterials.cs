using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Takeoff;

namespace Hoopwright.CoverSteps;

/// <summary>What a step uses up, counted by the very rules of the takeoff, so that all steps together use what it lists.</summary>
internal sealed class StepMaterials(Tunnel tunnel, CoverPlan cover)
{
    // The takeoff has told what it asked of the plan; the same answers are not told twice.
    private readonly Answers answers = new(tunnel.Units);

    internal ImmutableArray<MaterialLine> Film(params IEnumerable<CoverPiece> pieces) => Of(draft => Each(pieces, piece => CoverTakeoff.Film(draft, tunnel, cover, piece)));

    internal ImmutableArray<MaterialLine> Tape() => Of(draft => CoverTakeoff.Tape(draft, tunnel, cover));

    internal ImmutableArray<MaterialLine> Channel(IEnumerable<FasteningRun> runs) => Of(draft => Each(runs, run => CoverTakeoff.Channel(draft, tunnel, run, answers)));

    internal ImmutableArray<MaterialLine> Wire(IEnumerable<FasteningRun> runs) => Of(draft => Each(runs, run => CoverTakeoff.Wire(draft, tunnel, run, 1, answers)));

    internal ImmutableArray<MaterialLine> Temporary(IEnumerable<FasteningRun> runs) => Of(draft => Each(runs, run => CoverTakeoff.Temporary(draft, tunnel, cover, run)));

    internal ImmutableArray<MaterialLine> Battens(IEnumerable<FasteningRun> runs) => Of(draft => Each(runs, run => CoverTakeoff.Batten(draft, tunnel, run, answers)));

    internal ImmutableArray<MaterialLine> Ropes() => Of(draft => CoverTakeoff.Pulling(draft, tunnel, cover));

    internal ImmutableArray<MaterialLine> Air() => Of(draft => CoverTakeoff.Air(draft, tunnel, cover));

    internal ImmutableArray<MaterialLine> Roller(SideWall side) => Of(draft => SideTakeoff.RollUp(draft, tunnel, side, new FastenerAnswers(tunnel.Plan, answers)));

    internal ImmutableArray<MaterialLine> Winch(SideWall side) => Of(draft => SideTakeoff.Drop(draft, tunnel, side));

    /// <summary>How many of an item a step uses.</summary>
    internal static decimal Count(ImmutableArray<MaterialLine> lines, string item) => lines.Where(line => line.Item == item).Sum(line => line.Quantity);

    private static void Each<T>(IEnumerable<T> items, Action<T> add)
    {
        foreach (T item in items) add(item);
    }

    private static ImmutableArray<MaterialLine> Of(Action<TakeoffDraft> add)
    {
        var draft = new TakeoffDraft();
        add(draft);
        return draft.List().Lines;
    }
}
