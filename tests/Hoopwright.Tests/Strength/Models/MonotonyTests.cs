using CsCheck;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Strength.Models;

/// <summary>More steel never stands less: a property of any frame of one material under loads that do not grow with it.</summary>
public sealed class MonotonyTests
{
    // Limits are found by halving to half a per mille of the load, so two that are equal can differ by that, twice over.
    private const double Alike = 1.002;

    private static readonly (StrengthLevel Level, Func<StrengthReport, StrengthLevel, double?> Of)[] Limits =
    [
        (StrengthLevel.Storm, Snow), (StrengthLevel.Code, Snow), (StrengthLevel.Storm, Wind), (StrengthLevel.Code, Wind),
    ];

    [Fact]
    public void Limits_never_rise_when_bows_stand_further_apart() => (from plan in Steel from fewer in Gen.Int[1, 3] select (plan, fewer)).Sample((plan, fewer) =>
    {
        int bays = Math.Max(1, SamplePlans.LayOut(plan).Bays - fewer);
        Length wider = plan.Frame.Length!.Value.Value / bays;
        NeverRises(plan, plan with { Frame = plan.Frame with { BowSpacing = new Written<Length>("wider", Length.FromMetres(wider.Metres * (1 + 1e-12))) } });
    }, iter: 40);

    [Fact]
    public void Limits_never_rise_when_walls_get_thinner() => (from plan in Steel from percent in Gen.Int[50, 95] select (plan, percent)).Sample((plan, percent) =>
    {
        Length wall = SamplePlans.LayOut(plan).BowTube.Wall * (percent / 100.0);
        NeverRises(plan, plan with { Frame = plan.Frame with { BowTube = plan.Frame.BowTube with { Wall = new Written<Length>("thinner", wall) } } });
    }, iter: 40);

    // Equal bays, and a tie on every bow or on none: else a change of spacing also changes which bows have ties and which bay is short.
    private static Gen<Plan> Steel { get; } = Generate.ValidPlan.Select(plan => plan with
    {
        Frame = plan.Frame with
        {
            Bays = BayRule.Equal,
            BowTube = plan.Frame.BowTube with { Material = TubeMaterial.GalvanizedSteel },
            Tie = plan.Frame.Tie is { } tie ? tie with { Every = 1 } : null,
        },
    });

    private static void NeverRises(Plan plan, Plan weaker)
    {
        StrengthReport before = Stands(plan), after = Stands(weaker);
        foreach ((StrengthLevel level, Func<StrengthReport, StrengthLevel, double?> of) in Limits)
        {
            if (of(before, level) is not { } was || of(after, level) is not { } now) continue;
            Assert.True(now <= (was * Alike) + 1e-3, FormattableString.Invariant($"{level}: {was:R} before, {now:R} after"));
        }
    }

    private static StrengthReport Stands(Plan plan)
    {
        Tunnel tunnel = SamplePlans.LayOut(plan);
        return StrengthPlanner.Plan(tunnel, new Answers(tunnel.Units));
    }

    private static double? Snow(StrengthReport report, StrengthLevel level) => report.InSnow(level)?.GroundSnow?.Taken.Pascals;

    private static double? Wind(StrengthReport report, StrengthLevel level) => report.InWind(level)?.Wind?.Taken.MetresPerSecond;
}
