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

    [Fact]
    public void Bows_of_the_example_that_stand_closer_stand_more_at_every_step()
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        StrengthReport[] closer = [.. new[] { 5.0, 4.5, 4, 3.5, 3, 2.5 }.Select(feet => Stands(plan with { Frame = plan.Frame with { BowSpacing = new Written<Length>("closer", Length.FromFeet(feet)) } }))];
        foreach ((StrengthReport wider, StrengthReport narrower) in closer.Zip(closer.Skip(1)))
        {
            foreach ((StrengthLevel level, Func<StrengthReport, StrengthLevel, double?> of) in Limits) Assert.True(of(narrower, level) > of(wider, level));
            Assert.True(narrower.Combinations[0].Utilisation!.Value.Value < wider.Combinations[0].Utilisation!.Value.Value);
            Assert.True(Bows(narrower) < Bows(wider));
            foreach ((PartStrength one, PartStrength other) in wider.Parts.Where(part => part.Code.StartsWith("post-concrete-uplift", StringComparison.Ordinal)).Zip(narrower.Parts.Where(part => part.Code.StartsWith("post-concrete-uplift", StringComparison.Ordinal))))
                Assert.True(other.AtWeakest!.Value.Value < one.AtWeakest!.Value.Value);
        }

        static double Bows(StrengthReport report) => report.Row!.Parts.First(part => part.Kind == "bow").Utilisation!.Value.Value;
    }

    // A post that holds its leg harder takes more moment at the ground. Where the foot is the first place at its limit, that is what it costs.
    [Fact]
    public void Deeper_posts_stand_more_snow_and_less_wind_only_where_the_foot_itself_is_the_first_place_at_its_limit()
    {
        Plan plan = SamplePlans.Example("gothic-26ft");
        StrengthReport[] deeper = [.. new[] { 24.0, 30, 36, 42 }.Select(inches => Stands(plan with { Ground = plan.Ground with { PostEmbedment = new Written<Length>("deeper", Length.FromInches(inches)) } }))];
        bool fell = false;
        foreach ((StrengthReport before, StrengthReport after) in deeper.Zip(deeper.Skip(1)))
        {
            foreach (StrengthLevel level in Enum.GetValues<StrengthLevel>())
            {
                Assert.True(Snow(after, level) * Alike >= Snow(before, level));
                if (Wind(after, level) * Alike >= Wind(before, level)) continue;
                fell = true;
                Assert.Equal(0, after.InWind(level)!.Up.Metres, 1e-6);
            }
        }
        Assert.True(fell);
        foreach (StrengthLevel level in Enum.GetValues<StrengthLevel>())
        {
            // Feet that are free to lean do not hang on how deep a post stands.
            double?[] hinged = [.. new[] { 24.0, 42 }.Select(inches => Wind(Stands(plan with { Ground = plan.Ground with { LegBase = LegBase.Pinned, PostEmbedment = new Written<Length>("deeper", Length.FromInches(inches)) } }), level))];
            Assert.Equal(hinged[0], hinged[1]);
        }
    }

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
