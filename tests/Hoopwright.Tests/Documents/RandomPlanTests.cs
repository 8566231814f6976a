using System.Globalization;
using System.Text;
using CsCheck;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Documents;

public sealed class RandomPlanTests
{
    // The hungriest of ten thousand takes under 30 MB.
    private const long MostBytes = 300_000_000;

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
        Assert.True(laid > all * 9 / 10, $"Only {laid} of {all} lay out: " + string.Join("; ", why.CountBy(code => code).OrderByDescending(pair => pair.Value)));
    }

    [Fact]
    public void Ten_thousand_mangled_plans_give_whole_results_or_errors_and_never_an_exception() => Generate.MangledPlanBytes.Sample(bytes =>
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(bytes), null, CutEffort.Least, bytes.Length % 10 == 0 ? WorkDepth.Whole : WorkDepth.Orders);
        // Work is measured by what it allocates, which does not hang on how busy the machine is.
        long worked = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(worked < MostBytes, string.Create(CultureInfo.InvariantCulture, $"{worked} bytes"));
        Assert.NotEmpty(ResultsJson.Write(planned));
        return planned.Orders is not null || planned.Diagnostics.Any(found => found.Severity == Severity.Error);
    }, iter: 10_000);

    [Fact]
    public void A_plan_reads_back_as_it_was_written_byte_for_byte() => Generate.ValidPlan.Sample(plan =>
    {
        byte[] written = PlanWriter.Write(plan);
        PlanReading again = PlanReader.Read(written);
        return again.Diagnostics.IsEmpty && written.AsSpan().SequenceEqual(PlanWriter.Write(again.Plan));
    }, iter: 500);
}
