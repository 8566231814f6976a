using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.AsBuilt;

/// <summary>Lays out what stands: the plan, then the plan with what was measured in its place.</summary>
public static class AsBuiltPlanner
{
    /// <summary>Lays out what stands. Never throws for a plan. Without measurements in the site book it is the plan that is laid out, and nothing else is asked.</summary>
    /// <param name="plan">The plan with its site book.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static AsBuiltOutcome LayOut(Plan plan, Answers answers)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(answers);
        LayoutOutcome layout = TunnelPlanner.LayOut(plan, answers);
        if (layout.Tunnel is not { } planned || !MeasurementReader.HasMeasurements(plan)) return new AsBuiltOutcome(layout.Tunnel, null, layout.Diagnostics);

        SiteMeasurements measurements = new MeasurementReader(plan, planned, AsBuiltTolerances.Of(plan, planned.Length, answers)).Read();
        List<Diagnostic> found = [.. layout.Diagnostics, .. measurements.Diagnostics];
        Tunnel standing = planned;
        bool doesNotFit = false;
        if (measurements.Sizes is { } sizes)
        {
            // What it asks was asked for the plan.
            LayoutOutcome built = TunnelPlanner.LayOut(plan, new Answers(answers.Units), sizes);
            if (built.Tunnel is { } fitted)
            {
                standing = fitted;
                found.AddRange(built.Diagnostics);
            }
            else
            {
                doesNotFit = true;
                found.AddRange(built.Diagnostics.Where(each => each.Severity == Severity.Error).Select(each => new Diagnostic("site-book.does-not-fit", Severity.Warning, each.Path,
                    $"What was measured does not go together with the plan, so the plan stands in until it is settled: {each.Message}", each.Seen, each.Accepted)));
            }
        }
        Squaring? squaring = Squaring.Of(measurements);
        var remedies = new Remedies(measurements, squaring);
        var asBuilt = new AsBuiltTunnel
        {
            Measurements = measurements,
            Standing = standing,
            DoesNotFit = doesNotFit,
            Squaring = squaring,
            Noise = MeasuringNoise.Of(measurements),
            Deviations = [.. measurements.Measured.Select(remedies.Of)],
        };
        return new AsBuiltOutcome(standing, asBuilt, [.. found.Distinct()]);
    }
}
