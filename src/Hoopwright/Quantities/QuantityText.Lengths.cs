namespace Hoopwright.Quantities;

/// <content>Lengths and tube walls.</content>
public static partial class QuantityText
{
    private const string LengthExamples = "26 ft, 5' 6-1/2\", 66.5 in, 7.9 m, 90 cm or 1200 mm";
    private const string WallExamples = "0.083 in, 2.1 mm or 14 ga";

    // Longest length that can be meant on a site: 10 km.
    private const decimal LongestMetres = 10_000m;

    /// <summary>
    /// Reads a length such as <c>26 ft</c>, <c>5' 6-1/2"</c>, <c>66.5 in</c>, <c>7.9 m</c>. Typographic marks are accepted;
    /// a bare number, a comma, or 12 inches and more beside feet are not. Exact: equal lengths read equal however written.
    /// </summary>
    /// <param name="text">As typed; may be null.</param>
    /// <returns>The length, at most 10 km either way; or what is wrong.</returns>
    public static Reading<Length> ReadLength(string? text)
    {
        (string? clean, string? problem, string? accepted) = CleanText.Of(text, LengthExamples);
        return clean is null ? Reading.Fault<Length>(problem!, accepted!) : ReadCleanLength(clean);
    }

    /// <summary>
    /// Reads the wall of a tube: a length, or a gauge number such as <c>14 ga</c>, which is taken from the Birmingham tube
    /// gauge and says so. Sheet gauges differ; a measured wall is better than either.
    /// </summary>
    /// <param name="text">As typed; may be null.</param>
    /// <returns>The wall, above 0 and at most 1 in; or what is wrong.</returns>
    public static Reading<TubeWall> ReadTubeWall(string? text)
    {
        (string? clean, string? problem, string? accepted) = CleanText.Of(text, WallExamples);
        if (clean is null) return Reading.Fault<TubeWall>(problem!, accepted!);

        var cursor = new TextCursor(clean);
        if (cursor.TakeDecimal() is { Form: NumberForm.Whole } number)
        {
            cursor.SkipSpaces();
            string word = cursor.TakeWord().ToString();
            bool isGauge = word.ToUpperInvariant() is "GA" or "GAUGE" or "GAGE" or "BWG";
            if (isGauge && cursor.AtEnd)
                return TubeGauge.Find((int)number.Value) is TubeWall wall
                    ? Reading.Of(wall)
                    : Reading.Fault<TubeWall>(
                        $"Gauge {number.Value} is not in the tube gauge table.",
                        $"{TubeGauge.Thickest} to {TubeGauge.Thinnest} ga, or the measured wall such as 0.083 in or 2.1 mm");
        }

        Reading<Length> length = ReadCleanLength(clean);
        if (!length.IsRead) return Reading.Fault<TubeWall>(length.Problem!, WallExamples);
        return length.Value > Length.Zero && length.Value <= Length.FromInches(1)
            ? Reading.Of(new TubeWall(length.Value, null))
            : Reading.Fault<TubeWall>("A tube wall is more than nothing and at most an inch.", WallExamples);
    }

    private static Reading<Length> ReadCleanLength(string clean)
    {
        var cursor = new TextCursor(clean);
        bool negative = cursor.Take('-');
        if (!negative) cursor.Take('+');
        cursor.SkipSpaces();

        ReadOnlySpan<char> before = cursor.Rest;
        if (cursor.TakeTapeNumber(out string? fault) is not ExactNumber number) return LengthFault(fault);
        string written = before[..(before.Length - cursor.Rest.Length)].ToString();
        string? unknown = null;
        if (TakeLengthUnit(ref cursor, ref unknown) is not LengthUnit unit) return UnitFault(written, unknown, cursor);

        decimal metres = number.Value * MetresIn(unit);
        if (!cursor.AtEnd)
        {
            if (unit != LengthUnit.Foot)
                return Reading.Fault<Length>("There is something after the unit.", LengthExamples);
            if (number.Form != NumberForm.Whole)
                return Reading.Fault<Length>("Feet that are followed by inches must be a whole number.", "5' 6-1/2\" or 5.5 ft");
            cursor.SkipSpaces();
            if (cursor.Take('-')) cursor.SkipSpaces();
            ReadOnlySpan<char> inchesOn = cursor.Rest;
            if (cursor.TakeTapeNumber(out fault) is not ExactNumber inches) return LengthFault(fault);
            string inchesWritten = inchesOn[..(inchesOn.Length - cursor.Rest.Length)].ToString();
            if (TakeLengthUnit(ref cursor, ref unknown) is not LengthUnit.Inch || !cursor.AtEnd)
                return Reading.Fault<Length>(
                    "After feet come inches with their mark, and nothing more.",
                    $"{written}' {inchesWritten}\" or {written} ft {inchesWritten} in");
            if (inches.Value >= 12)
                return Reading.Fault<Length>("The inches beside feet must be less than 12.", "5' 6-1/2\" or 66.5 in");
            metres += inches.Value * MetresIn(LengthUnit.Inch);
        }

        return metres > LongestMetres
            ? Reading.Fault<Length>("That is too long for anything on a site.", "at most 10000 m")
            : Reading.Of(Length.FromMetres(ExactNumber.ToDouble(negative && metres != 0 ? -metres : metres)));
    }

    private static Reading<Length> LengthFault(string? fault) => fault is null
        ? Reading.Fault<Length>("There is no number that can be read as a length.", LengthExamples)
        : Reading.Fault<Length>(fault, "5-1/2 in, 3/8 in or 2-7/16 in, down to 1/64");

    private static Reading<Length> UnitFault(string number, string? unknown, TextCursor cursor)
    {
        if (unknown is not null)
            return Reading.Fault<Length>($"“{unknown}” is not a unit of length.", $"one of ft, in, m, cm, mm: {LengthExamples}");
        if (cursor.AtEnd)
            return Reading.Fault<Length>("The number has no unit.", $"{number} ft or {number} in or {number} m or {number} mm");
        return Reading.Fault<Length>(
            "There is something between the number and its unit.",
            char.IsAsciiDigit(cursor.Rest[0]) ? "one number without spaces or signs inside, such as 1200 mm" : LengthExamples);
    }

    private static LengthUnit? TakeLengthUnit(ref TextCursor cursor, ref string? unknown)
    {
        cursor.SkipSpaces();
        if (cursor.Take('\'')) return LengthUnit.Foot;
        if (cursor.Take('"')) return LengthUnit.Inch;
        string word = cursor.TakeWord().ToString();
        if (word.Length == 0) return null;
        LengthUnit? unit = word.ToUpperInvariant() switch
        {
            "FT" or "FOOT" or "FEET" => LengthUnit.Foot,
            "IN" or "INCH" or "INCHES" => LengthUnit.Inch,
            "M" or "METRE" or "METRES" or "METER" or "METERS" => LengthUnit.Metre,
            "CM" => LengthUnit.Centimetre,
            "MM" => LengthUnit.Millimetre,
            _ => null,
        };
        if (unit is null) unknown = word;
        return unit;
    }

    /// <summary>Metres in a unit, exactly. Foot and inch: NIST SP 811 (2008), B.8.</summary>
    private static decimal MetresIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Foot => 0.3048m,
        LengthUnit.Inch => 0.0254m,
        LengthUnit.Metre => 1m,
        LengthUnit.Centimetre => 0.01m,
        LengthUnit.Millimetre => 0.001m,
    };

    private enum LengthUnit
    {
        Foot,
        Inch,
        Metre,
        Centimetre,
        Millimetre,
    }
}
