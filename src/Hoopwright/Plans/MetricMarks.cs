using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Plans;

/// <summary>
/// The usual values of a metric plan: lengths on marks that one says and orders, lumber in actual millimetres. In a plan in feet
/// and inches they stay as they are.
/// </summary>
internal static class MetricMarks
{
    // As near as this to a mark is on it: what is worked out ends in other last digits on other machines.
    private const double OnMarkMm = 1e-6;

    // From this length on, to these marks. What is thinner than all, film or the wall of a tube, has no marks.
    private static readonly ImmutableArray<(double FromMm, double StepMm)> Steps = [(100, 50), (20, 5), (2, 1)];

    /// <summary>A length on a metric mark: 50 mm from 100 mm on, 5 mm from 20 mm on, 1 mm from 2 mm on; under that as it is.</summary>
    /// <param name="exact">The length.</param>
    /// <param name="way">Which way it goes.</param>
    public static Length Of(Length exact, MetricWay way)
    {
        double mm = exact.Millimetres;
        if (way == MetricWay.AsItIs || Steps.FirstOrDefault(step => mm >= step.FromMm - OnMarkMm) is not { StepMm: > 0 } marks) return exact;
        double steps = way switch
        {
            MetricWay.Up => Math.Ceiling((mm - OnMarkMm) / marks.StepMm),
            MetricWay.Down => Math.Floor((mm + OnMarkMm) / marks.StepMm),
            MetricWay.Nearest or MetricWay.AsItIs => Math.Floor(((mm + OnMarkMm) / marks.StepMm) + 0.5),
        };
        return Length.FromMillimetres(steps * marks.StepMm);
    }

    /// <summary>A usual length as a plan in these units takes it.</summary>
    public static Usual<Length> In(this Usual<Length> usual, UnitSystem units) =>
        units == UnitSystem.Metric ? usual with { Value = Of(usual.Value, usual.Metric), Metric = MetricWay.AsItIs } : usual;

    /// <summary>The value of a usual length as a plan in these units takes it.</summary>
    public static Length ValueIn(this Usual<Length> usual, UnitSystem units) => usual.In(units).Value;

    /// <summary>A usual size of lumber as a plan in these units takes it: the actual metric size that stands in for the nominal one.</summary>
    public static Usual<string> LumberIn(this Usual<string> usual, UnitSystem units) => units == UnitSystem.Metric && LumberSizes.MetricFor(usual.Value) is { } metric
        ? usual with { Value = metric, Source = OfSize(usual.Source) }
        : usual;

    // What is published of the nominal size decides still; the size in millimetres is nobody's.
    private static Citation OfSize(Citation source) => source.Standing == Standing.Published
        ? new Citation(source.Title, source.Place + "; the size in millimetres from memory", Standing.FromMemory)
        : Citation.FromMemory;
}
