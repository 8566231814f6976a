using System.Collections.Immutable;
using System.Text;
using Hoopwright.Cutting;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Sweeps;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Sweeps;

public sealed class SweepTests
{
    private static readonly byte[] Round = SamplePlans.ExampleBytes("round-14ft");

    [Fact]
    public void The_answer_for_one_design_is_that_plans_own()
    {
        Sweep sweep = Asked(Round, new VariedField("frame.bowSpacing", ["5 ft", "4 ft"]), new VariedField("frame.bowTube.wall", ["0.083 in"]));
        Assert.Equal(2, sweep.Designs);
        Plan own = SamplePlans.Example("round-14ft");
        own = own with
        {
            Frame = own.Frame with
            {
                BowSpacing = new Written<Length>("4 ft", Length.FromFeet(4)),
                BowTube = own.Frame.BowTube with { Wall = new Written<Length>("0.083 in", Length.FromInches(0.083)) },
            },
        };
        Assert.Equal(PlanWriter.Write(own), PlanWriter.Write(sweep.PlanOf(1).Plan));
        PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(own, false, []), effort: CutEffort.Least);
        SweptDesign design = sweep.Work(1);
        Assert.Equal(planned.Orders!.Total, design.Cost);
        Assert.Equal(planned.Strength!.Verdict, design.Verdict);
        Assert.Equal(planned.Strength.Limits.First(limit => limit.Level == StrengthLevel.Storm && limit.GroundSnow is not null).GroundSnow!.Taken, design.StormSnow);
        Assert.Equal(planned.Strength.Limits.First(limit => limit.Level == StrengthLevel.Code && limit.Wind is not null).Wind!.Taken, design.CodeGust);
    }

    [Fact]
    public void Snow_at_the_limit_never_rises_when_bows_stand_further_apart_or_walls_get_thinner()
    {
        string[] spacings = ["3 ft", "4 ft", "6 ft"], walls = ["0.12 in", "0.083 in", "0.065 in"];
        Sweep sweep = Asked(Round, new VariedField("frame.bowSpacing", [.. spacings]), new VariedField("frame.bowTube.wall", [.. walls]));
        double[] snowPa = [.. Enumerable.Range(0, sweep.Designs).Select(number => sweep.Work(number).StormSnow!.Value.Pascals)];
        for (int spacing = 0; spacing < 3; spacing++)
        {
            for (int wall = 0; wall < 3; wall++)
            {
                double here = snowPa[(3 * spacing) + wall];
                // Limits are found by halving, so two that are equal can differ by its last step.
                if (spacing > 0) Assert.True(here <= snowPa[(3 * (spacing - 1)) + wall] * 1.001, $"{spacings[spacing]}, {walls[wall]}");
                if (wall > 0) Assert.True(here <= snowPa[(3 * spacing) + wall - 1] * 1.001, $"{spacings[spacing]}, {walls[wall]}");
            }
        }
        Assert.True(snowPa[8] < snowPa[0]);
    }

    [Fact]
    public void Order_is_by_cost_where_designs_stand_and_by_limits_where_they_do_not()
    {
        SweptDesign[] designs =
        [
            Made(0, StrengthVerdict.DoesNotStand, 1, 300), Made(1, StrengthVerdict.Marginal, 5, 900), Made(2, StrengthVerdict.Stands, 30, 2000),
            Made(3, null, null, null), Made(4, StrengthVerdict.Stands, 20, 1000), Made(5, StrengthVerdict.DoesNotStand, 9, 700), Made(6, StrengthVerdict.Stands, 20, 1000),
        ];
        Assert.Equal([4, 6, 2, 1, 5, 0, 3], SweepRank.Order(designs).Select(design => design.Number));
        Assert.Equal([4, 6, 2, 1, 5, 0, 3], SweepRank.Order(designs.Reverse()).Select(design => design.Number));
    }

    [Fact]
    public void Kept_designs_come_back_as_they_were_and_only_to_their_own_sweep()
    {
        Sweep sweep = Asked(Round, new VariedField("frame.bowSpacing", ["5 ft", "4 ft"]));
        SweptDesign design = sweep.Work(1);
        byte[] file = SweepRecord.Write(sweep, [design]);
        (ImmutableArray<SweptDesign> done, var wrong) = SweepRecord.Read(sweep, file);
        Assert.Empty(wrong);
        Assert.Equal(SweepText.Json(sweep, [design], 1), SweepText.Json(sweep, done, 1));
        Assert.Equal(file, SweepRecord.Write(sweep, done));
        Assert.Equal("sweep.resume.other-sweep", Assert.Single(SweepRecord.Read(Asked(Round, new VariedField("frame.bowSpacing", ["5 ft", "3 ft"])), file).Diagnostics).Code);
        Assert.Equal("sweep.resume.unreadable", Assert.Single(SweepRecord.Read(sweep, file.AsMemory(0, file.Length / 2)).Diagnostics).Code);
    }

    [Theory]
    [InlineData("frame.bowSpacing", "4", "plan.unit-missing", "frame.bowSpacing")]
    [InlineData("fram.bowSpacing", "4 ft", "plan.unknown-field", "fram")]
    [InlineData("frame.bow.shape", "onion", "plan.unknown-word", "frame.bow.shape")]
    [InlineData("frame.bowTube.stockLengths[40]", "20 ft", "sweep.no-such-path", "frame.bowTube.stockLengths[40]")]
    [InlineData("name.first", "A", "sweep.no-such-path", "name.first")]
    [InlineData("", "A", "sweep.no-such-path", "")]
    public void What_cannot_be_varied_is_named_by_its_path(string path, string value, string code, string where)
    {
        SweepReading reading = Sweep.Read(Round, [new VariedField(path, [value])]);
        Assert.Null(reading.Sweep);
        Assert.Contains(reading.Diagnostics, found => found.Code == code && found.Path == where);
    }

    [Fact]
    public void Too_many_designs_and_a_field_given_twice_are_told_before_any_is_worked_out()
    {
        VariedField Many(string path) => new(path, [.. Enumerable.Range(1, 100).Select(inches => $"{inches} in")]);
        Assert.Equal("sweep.too-many", Assert.Single(Sweep.Read(Round, [Many("frame.bowSpacing"), Many("frame.span")]).Diagnostics).Code);
        Assert.Contains(Sweep.Read(Round, [new VariedField("name", ["A"]), new VariedField("name", ["B"])]).Diagnostics, found => found.Code == "sweep.field-twice");
    }

    [Fact]
    public void Counts_texts_words_and_left_out_fields_can_be_varied_and_a_design_that_cannot_be_built_says_why()
    {
        Sweep sweep = Asked(Round, new VariedField("frame.purlins.count", ["1", "null"]), new VariedField("loads.hillFactor", ["1", "1.2"]), new VariedField("frame.bow.peakHeight", ["9 ft", "3 ft"]));
        Assert.Equal(1, sweep.PlanOf(0).Plan.Frame.Purlins!.Count);
        Assert.Null(sweep.PlanOf(4).Plan.Frame.Purlins!.Count);
        Assert.Equal("1.2", sweep.PlanOf(2).Plan.Loads.HillFactor!.Value.Text);
        SweptDesign wide = sweep.Work(1);
        Assert.Null(wide.Verdict);
        Assert.StartsWith("ends.front.doors[0].width:", wide.Problem, StringComparison.Ordinal);
        Assert.Contains("cannotBeBuilt", SweepText.Csv(sweep, [wide]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"name\": \"a\", \"name\": \"b\" }")]
    [InlineData("{ \"hoopwright\": \"9.0\" }")]
    public void A_file_that_is_no_plan_is_a_diagnostic(string text) => Assert.NotEmpty(Sweep.Read(Encoding.UTF8.GetBytes(text), [new VariedField("name", ["A"])]).Diagnostics);

    private static Sweep Asked(byte[] plan, params ImmutableArray<VariedField> fields)
    {
        SweepReading reading = Sweep.Read(plan, fields);
        return reading.Sweep ?? throw new InvalidOperationException(string.Join("\n", reading.Diagnostics));
    }

    private static SweptDesign Made(int number, StrengthVerdict? verdict, int? cost, double? snowPa) => new()
    {
        Number = number,
        Values = [],
        Verdict = verdict,
        Cost = cost is { } given ? new Money(given) : null,
        StormSnow = snowPa is { } snow ? Pressure.FromPascals(snow) : null,
    };
}
