using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <summary>What each step of the frame uses up: every part that the takeoff counts goes to one step, so that all steps together use what it lists.</summary>
internal sealed class StepShares : TakeoffDraft
{
    private readonly Dictionary<string, TakeoffDraft> shares = [];
    private readonly Dictionary<string, string> stepOfMember;
    private readonly Dictionary<string, string> doorEnd = [];

    /// <summary>Shares the takeoff of a tunnel out, its film apart.</summary>
    internal StepShares(Tunnel tunnel)
    {
        stepOfMember = tunnel.Members.ToDictionary(member => member.Id, member => StepNames.Of(tunnel, member), StringComparer.Ordinal);
        foreach (EndWall end in tunnel.Ends)
        {
            foreach (DoorOpening door in end.Doors)
            {
                doorEnd[door.Id] = end.Name;
                foreach (DoorLeaf leaf in door.Leaves) doorEnd[leaf.Id] = end.Name;
            }
        }
        foreach (ConcreteHole hole in tunnel.Holes) stepOfMember[hole.Id] = StepNames.Concrete(stepOfMember[hole.PostId]);
        // The takeoff has told what it asked of the plan; the same answers are not told twice.
        TakeoffPlanner.Frame(this, tunnel, new Answers(tunnel.Units));
    }

    /// <summary>What a step uses up.</summary>
    internal ImmutableArray<MaterialLine> Of(string step) => shares.TryGetValue(step, out TakeoffDraft? share) ? share.List().Lines : [];

    /// <inheritdoc/>
    public override void Add(BuildStage stage, MaterialUnit unit, string item, string size, decimal quantity, string rule, Citation source, IEnumerable<string> trace, params ReadOnlySpan<string> rulePaths)
    {
        if (StepOf(item, [.. trace], rulePaths) is { } step) Share(step).Add(stage, unit, item, size, quantity, rule, source, trace, rulePaths);
    }

    /// <inheritdoc/>
    public override void Cut(BuildStage stage, string item, string size, MemberSection? section, PieceNeed piece, ImmutableArray<Length> stock, string rule, Citation source) =>
        Share(stage == BuildStage.Site ? StepNames.SetOut : stepOfMember[piece.MemberId]).Cut(stage, item, size, section, piece, stock, rule, source);

    // Null for what hangs and rolls curtains, which the steps of covering count themselves.
    private string? StepOf(string item, string[] trace, ReadOnlySpan<string> rulePaths) => item switch
    {
        Items.StringLine or Items.Stake => StepNames.SetOut,
        Items.CarriageBolt => StepNames.Baseboards,
        Items.ConduitHanger => StepNames.Bows,
        Items.Hinge or Items.Latch or Items.DropBolt or Items.DoorHandle or Items.DoorTrack or Items.TrackBracket or Items.RollerHanger or Items.OverheadDoor => StepNames.Doors(doorEnd[trace[0]]),
        Items.RigidSheet or Items.SheetScrew => StepNames.Leaves(doorEnd[trace[0]]),
        Items.SelfDrillingScrew when rulePaths.Contains("fasteners.screwsPerLeg") => StepNames.Bows,
        Items.Crank or Items.RollClip => null,
        _ => trace.Length > 0 && stepOfMember.TryGetValue(trace[0], out string? step) ? step : null,
    };

    private TakeoffDraft Share(string step)
    {
        if (!shares.TryGetValue(step, out TakeoffDraft? share)) shares.Add(step, share = new TakeoffDraft());
        return share;
    }
}
