using System.Collections.Immutable;
using System.Text;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>
/// What would make a tunnel stronger: single changes to its plan, each worked out by itself, so that they can be worked out in any
/// order and on any number of cores.
/// </summary>
public sealed class ChangeStudy
{
    private readonly string plan;
    private readonly Prices? book;

    private ChangeStudy(string plan, Prices? book, PlannedTunnel before, ImmutableArray<PlanChange> changes) =>
        (this.plan, this.book, Before, Changes) = (plan, book, before, changes);

    /// <summary>The plan as it is, worked out.</summary>
    public PlannedTunnel Before { get; }

    /// <summary>The changes that are tried.</summary>
    public ImmutableArray<PlanChange> Changes { get; }

    /// <summary>The verdict on the plan as it is.</summary>
    public StrengthVerdict Verdict => Before.Strength?.Verdict ?? StrengthVerdict.NothingEntered;

    /// <summary>Asks what would make a tunnel stronger.</summary>
    /// <param name="plan">The bytes of the plan.</param>
    /// <param name="book">A price book whose prices come after those of the plan; null for none.</param>
    /// <returns>The study; or what must be put right in the plan first.</returns>
    public static (ChangeStudy? Study, ImmutableArray<Diagnostic> Diagnostics) Read(ReadOnlyMemory<byte> plan, Prices? book = null)
    {
        PlannedTunnel before = TunnelWorks.Plan(PlanReader.Read(plan), book, CutEffort.Least);
        if (before is not { Tunnel: { } tunnel, Strength: { } strength } || PlanEdit.Text(plan) is not { } text)
            return (null, [.. before.Diagnostics.Where(each => each.Severity == Severity.Error)]);
        return (new ChangeStudy(text, book, before, strength.NotChecked is null ? ChangeFinder.Of(tunnel) : []), []);
    }

    /// <summary>The plan with a change, as read.</summary>
    /// <param name="number">Number of the change, from 0.</param>
    public PlanReading PlanOf(int number) => PlanReader.Read(Changed(number));

    /// <summary>The plan with a change, worked out.</summary>
    /// <param name="number">Number of the change, from 0.</param>
    public PlannedTunnel Planned(int number) => TunnelWorks.Plan(PlanOf(number), book, CutEffort.Least);

    /// <summary>Works a change out.</summary>
    /// <param name="number">Number of the change, from 0.</param>
    public ChangedDesign Work(int number) => ChangedDesign.Of(Changes[number], number, Planned(number), Before);

    /// <summary>The study of the plan with a change made, to look for the next; null when that plan cannot be built.</summary>
    /// <param name="number">Number of the change, from 0.</param>
    public ChangeStudy? After(int number) => Read(Changed(number), book).Study;

    private byte[] Changed(int number) => PlanEdit.With(plan, Changes[number].Values.Select(value => (value.Path, value.Json)))
        ?? throw new InvalidOperationException("A change names a path that the plan cannot have.");

    /// <summary>The plan as it is, without comments.</summary>
    public byte[] PlanBytes => Encoding.UTF8.GetBytes(plan);
}
