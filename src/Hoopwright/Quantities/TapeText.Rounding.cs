namespace Hoopwright.Quantities;

/// <content>Rounding: one function for each purpose, applied once, at the end.</content>
public static partial class TapeText
{
    // A value this near to a mark is on it; far below what a tape shows, far above what arithmetic loses.
    private const double OnTheMarkM = 1e-9;

    /// <summary>A member is cut to the nearest 1/16 in or 1 mm.</summary>
    public static Length RoundForMember(Length exact, UnitSystem units) => Nearest(exact, FineStep(units));

    /// <summary>A mark on a running tape goes to the nearest 1/16 in or 1 mm. Round the exact running value, never a sum of rounded ones.</summary>
    public static Length RoundToMark(Length exact, UnitSystem units) => Nearest(exact, FineStep(units));

    /// <summary>Film is cut up to the next whole inch or 10 mm: a little long can be trimmed, a little short is lost.</summary>
    public static Length RoundUpForFilm(Length exact, UnitSystem units) =>
        Up(exact, units == UnitSystem.UsCustomary ? Step.OfInches(1, 1) : Step.OfMillimetres(10));

    /// <summary>A rough opening is made up to the next 1/16 in or 1 mm, so that what goes in still fits.</summary>
    public static Length RoundUpForOpening(Length exact, UnitSystem units) => Up(exact, FineStep(units));

    /// <summary>A hole is dug up to the next whole inch or 10 mm.</summary>
    public static Length RoundUpForHole(Length exact, UnitSystem units) =>
        Up(exact, units == UnitSystem.UsCustomary ? Step.OfInches(1, 1) : Step.OfMillimetres(10));

    /// <summary>What an "at most" answer names: down to the 1/16 in or 1 mm below, so that the named value works.</summary>
    public static Length RoundDownForLimit(Length exact, UnitSystem units) => -Up(-exact, FineStep(units));

    /// <summary>What an "at least" answer names: up to the 1/16 in or 1 mm above, so that the named value works.</summary>
    public static Length RoundUpForLimit(Length exact, UnitSystem units) => Up(exact, FineStep(units));

    /// <summary>Snow is measured with a stick: down to the half inch or 10 mm below, so that it is cleared no later than it must be.</summary>
    public static Length RoundDownForSnow(Length exact, UnitSystem units) =>
        -Up(-exact, units == UnitSystem.UsCustomary ? Step.OfInches(1, 2) : Step.OfMillimetres(10));

    private static Step FineStep(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => Step.OfInches(1, 16),
        UnitSystem.Metric => Step.OfMillimetres(1),
    };

    private static Length Nearest(Length exact, Step step)
    {
        double steps = Math.Floor((Finite(exact.Abs().Metres) + OnTheMarkM) / step.Metres + 0.5);
        return exact < Length.Zero && steps > 0 ? -step.Times(steps) : step.Times(steps);
    }

    private static Length Up(Length exact, Step step)
    {
        double steps = Math.Ceiling((Finite(exact.Metres) - OnTheMarkM) / step.Metres);
        return steps == 0 ? Length.Zero : step.Times(steps);
    }

    /// <summary>A number that is none cannot be shown or cut; it is a fault of ours that must not reach a saw.</summary>
    private static double Finite(double value) => double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A quantity must be a finite number.");

    /// <summary>One mark of a tape to the next; kept as a ratio so that whole steps are exact.</summary>
    private readonly record struct Step(double Numerator, double Denominator, bool IsInches)
    {
        internal static Step OfInches(double numerator, double denominator) => new(numerator, denominator, true);

        internal static Step OfMillimetres(double numerator) => new(numerator, 1, false);

        internal double Metres => Times(1).Metres;

        internal Length Times(double steps) => IsInches
            ? Length.FromInches(steps * Numerator / Denominator)
            : Length.FromMillimetres(steps * Numerator);
    }
}
