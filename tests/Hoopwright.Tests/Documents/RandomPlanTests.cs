using System.Diagnostics;
using System.Text;
using CsCheck;
using Hoopwright.Cover;
using Hoopwright.Cuts.Film;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Documents;

public sealed class RandomPlanTests
{
    [Fact]
    public void Nearly_all_random_plans_read_and_lay_out()
    {
        int all = 0, laid = 0;
        List<string> why = [];
        Generate.PlanText.Sample(text =>
        {
            PlanReading reading = PlanReader.Read(Encoding.UTF8.GetBytes(text));
            Assert.Empty(reading.Diagnostics);
            LayoutOutcome outcome = TunnelPlanner.LayOut(reading.Plan, new Answers(reading.Plan.Units!.Value));
            all++;
            if (outcome.Tunnel is not null) laid++;
            else why.AddRange(outcome.Diagnostics.Where(found => found.Severity == Severity.Error).Select(found => found.Code + " " + found.Path));
        }, iter: 500, threads: 1);
        Assert.True(laid > all / 2, $"Only {laid} of {all} lay out: " + string.Join("; ", why.CountBy(code => code).OrderByDescending(pair => pair.Value)));
    }

    [Fact]
    public void Ten_thousand_plans_lay_out_into_members_that_have_a_length() => Generate.PlanText.Sample(text =>
    {
        Plan plan = PlanReader.Read(Encoding.UTF8.GetBytes(text)).Plan;
        LayoutOutcome outcome = TunnelPlanner.LayOut(plan, new Answers(plan.Units!.Value));
        return outcome.Tunnel is { } tunnel
            ? tunnel.Members.All(member => double.IsFinite(member.CutLength.Metres) && member.CutLength > Length.Zero)
            : outcome.Diagnostics.Any(found => found.Severity == Severity.Error);
    }, iter: 10_000);

    [Fact]
    public void A_thousand_valid_plans_give_a_cover_and_film_cuts() => Generate.ValidPlan.Sample(plan =>
    {
        var answers = new Answers(plan.Units!.Value);
        CoverPlan cover = CoverPlanner.Plan(TunnelPlanner.LayOut(plan, answers).Tunnel!, answers).Plan;
        FilmCutPlan film = FilmCutter.Cut(cover, plan, answers).Plan;
        return film.Rolls.Length > 0 || film.UnplacedIds.Length > 0;
    }, iter: 1_000);

    [Fact]
    public void Ten_thousand_mangled_plans_give_a_plan_or_reasons_and_never_an_exception() => Generate.MangledPlanBytes.Sample(bytes =>
    {
        long start = Stopwatch.GetTimestamp();
        PlanReading reading = PlanReader.Read(bytes);
        LayoutOutcome outcome = TunnelPlanner.LayOut(reading.Plan, new Answers(reading.Plan.Units ?? UnitSystem.UsCustomary));
        Assert.True(Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(5), "slow");
        return outcome.Tunnel is not null || outcome.Diagnostics.Length > 0;
    }, iter: 10_000);

    [Fact]
    public void A_plan_reads_back_as_it_was_written_byte_for_byte() => Generate.ValidPlan.Sample(plan =>
    {
        byte[] written = PlanWriter.Write(plan);
        PlanReading again = PlanReader.Read(written);
        return again.Diagnostics.IsEmpty && written.AsSpan().SequenceEqual(PlanWriter.Write(again.Plan));
    }, iter: 500);
}
