using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Inside.Light;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Inside;

/// <summary>A year inside, as plain text for people.</summary>
public static class InsideSheet
{
    /// <summary>What everyone who heats or shuts a tunnel must hear.</summary>
    public const string Caution =
        "A shut tunnel in the sun gets hot enough to harm people within the hour: open it before anyone works inside. Heaters that burn fuel give off carbon monoxide and need air and a flue; wires and fans near water want a licensed electrician. Do not lean on a night of this page to keep a crop from frost: put a thermometer in.";

    /// <summary>What measurements the numbers were held against.</summary>
    public const string Measured =
        "Measured in an unheated film tunnel (Savage 1980): nights 1.3 K warmer than outside in the mean, days 4.2 K; growers' rule about 3 °F under one film. Of a shut tunnel under one film expect nights 1 to 2 K warmer, anywhere from 2 K colder to 4 K warmer: coldest under a clear sky without wind. No open record of a film tunnel hour by hour was found to test against.";

    /// <summary>The formulas that it is worked out by.</summary>
    public static ImmutableArray<Formula> Formulas => [.. Named.Select(each => each.Formula)];

    /// <summary>The same, each with what it is for in words.</summary>
    public static ImmutableArray<(string What, Formula Formula)> Named { get; } =
    [
        ("light through film", FilmOptics.Transmission), ("light on the floor", FloorLight.Rule), ("air by warmth and wind", AirExchange.Rule), ("air that wind blows square through", AirExchange.Through),
        ("wind at the tunnel", LogWind.Rule), ("warmth between ground, film and sky", WarmthExchange.Rule), ("warmth from film to wind", HeatBalance.OutsideRule), ("warmth from film and ground to air", HeatBalance.InsideRule),
        ("water of crop, ground and film", HeatBalance.WaterRule), ("water that air can hold", MoistAir.Saturation), ("warmth of the sky", SkyInfrared.Rule), ("light of the sky apart from the sun's", DiffusePart.Rule),
        ("heater", HeaterSize.Rule), ("fans", FanSize.Rule), ("fans, rule of thumb", FanSize.Thumb), ("days on which hardy crops grow", InsideSeason.Rule),
    ];

    /// <summary>Warmth, light, air, how it could lie, heater and fans.</summary>
    /// <param name="report">The report.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Of(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"A year inside, with the weather of {(report.Weather.Length > 0 ? report.Weather : "the file")}{(report.TypicalYear ? " (a typical year: it has no extremes)" : "")}.\n");
        text.Append(CultureInfo.InvariantCulture, $"Floor {TapeText.Of(report.Floor, units)}, film {TapeText.Of(report.Cover, units)}, air {TapeText.Of(report.Volume, units)}.\n\n");
        Warmth(text, report, units);
        Light(text, report, units);
        Air(text, report, units);
        Headings(text, report, units);
        Sizes(text, report, units);
        text.Append('\n').Append(Caution).Append('\n');
        return text.ToString();
    }

    /// <summary>How growth is counted.</summary>
    public const string GrowthNote = "Growth is in degree days by the middle between each day's highest and lowest; of a row cover all is of the air under it.";

    /// <summary>How far the year opened by hand may be out by what is not known.</summary>
    public static string Band(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        InsideBand band = report.Band;
        return $"Not known: cracks, wind at the tunnel, the sky. With these at both ends of what is likely, opened by hand: hottest {TapeText.Of(band.HighestFrom, units)} to {TapeText.Of(band.HighestTo, units)}, coldest {TapeText.Of(band.LowestFrom, units)} to {TapeText.Of(band.LowestTo, units)}, nights {TapeText.Of(band.NightLiftFrom, units)} to {TapeText.Of(band.NightLiftTo, units)}.";
    }

    /// <summary>When hardy crops grow, and how long film is wet.</summary>
    public static string Season(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        InsideSeason season = report.Season;
        string days = season.ShortDays > 0
            ? $"Days are shorter than ten hours from {Day(season.ShortFrom)} to {Day(season.ShortTo)}: hardy crops nearly stand still."
            : "No day is shorter than ten hours.";
        return string.Create(CultureInfo.InvariantCulture, $"{days} On {season.HardyDays} days they grow: ten hours of day, and ground above {TapeText.Of(InsideSeason.WarmGround, units)}.\nWater stands on the film in {report.WetFilmHours} of {report.Hours.Length} h.");
    }

    /// <summary>What film and frame take of the light.</summary>
    public static string LightNote(InsideReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return string.Create(CultureInfo.InvariantCulture, $"Light for plants, moles a m² and day. Film lets {report.FilmSquare.Percent:0} % through square to it, {report.FilmDiffuse.Percent:0} % from all over the sky; the frame takes {report.FrameShade.Percent:0} %.");
    }

    /// <summary>Where the edges are.</summary>
    public static string EdgeNote(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        return $"Edges are {TapeText.OfRun(report.Across[0], units)} from the foot.";
    }

    /// <summary>What opens, and how much that is.</summary>
    public static string Opens(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        string what = report.Openings.IsEmpty ? "" : $"What opens: {string.Join("; ", report.Openings.Select(opening => $"{opening.Name} {TapeText.Of(opening.Free(OpenWide.Full), units)}"))}.\n";
        return string.Create(CultureInfo.InvariantCulture, $"{what}Wide open is {report.Air[^1].Free / report.Floor * 100:0} % of the floor; a rule asks for 15 to 20 % at the sides, and as much at the roof where there are roof vents.\nIn usual wind by what was measured in film houses; at most by the rule for wind that blows square through.");
    }

    /// <summary>Air, and how often it changes all the air inside in an hour.</summary>
    public static string Flow(InsideReport report, AirFlow flow, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        return string.Create(CultureInfo.InvariantCulture, $"{TapeText.Of(flow, units)} ({flow.CubicMetresPerSecond * 3600 / report.Volume.CubicMetres:0} changes/h)");
    }

    /// <summary>Which way it would best lie: for winter light, for air, for storms.</summary>
    public static ImmutableArray<string> Lies(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        HeadingStudy light = report.Headings.MaxBy(each => each.WinterLight)!, dark = report.Headings.MinBy(each => each.WinterLight)!;
        HeadingStudy air = report.Headings.MaxBy(each => each.AirAcross)!, storm = report.Headings.MinBy(each => each.StormAcross)!;
        double gain = ((light.WinterLight.MolesPerSquareMetre / Math.Max(dark.WinterLight.MolesPerSquareMetre, 1e-9)) - 1) * 100;
        return
        [
            string.Create(CultureInfo.InvariantCulture, $"most winter light on the floor: front {Faces(light)}, {gain:0.0} % more than front {Faces(dark)}"),
            $"most air through open sides on warm days: front {Faces(air)}, {TapeText.Of(air.AirAcross, units)} across",
            $"least storm on the long sides: front {Faces(storm)}, {TapeText.Of(storm.StormAcross, units)} across in the windiest hours",
        ];
    }

    /// <summary>Where the front faces.</summary>
    public static string Faces(HeadingStudy heading)
    {
        ArgumentNullException.ThrowIfNull(heading);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(heading.FrontFaces.Degrees):0}°");
    }

    /// <summary>What heater and fans must do.</summary>
    public static ImmutableArray<string> Machines(InsideReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        HeaterSize heater = report.Heater;
        return
        [
            $"A heater that holds {TapeText.Of(heater.Inside, units)} at {TapeText.Of(heater.Outside, units)} outside: {TapeText.Of(heater.Whole, units)} ({TapeText.Of(heater.ThroughFilm, units)} through the film, {TapeText.Of(heater.WithAir, units)} with air).",
            .. report.HeaterMean > Power.Zero ? (ImmutableArray<string>)[string.Create(CultureInfo.InvariantCulture, $"Over the year it would give {TapeText.Of(report.HeaterMean, units)} in the mean, {report.HeaterMean.Watts * report.Hours.Length / 1e6:0.0} MWh in all.")] : [],
            $"Fans in place of open sides: {TapeText.Of(report.Fan.ByBalance, units)} for {TapeText.Of(report.Fan.Rise, units)} in the brightest hour; {TapeText.Of(report.Fan.ByRule, units)} by the rule of 8 ft³ a minute for each ft² of floor.",
        ];
    }

    /// <summary>A month's mean light in moles a m² and day.</summary>
    public static string Mol(LightSum light) => light.MolesPerSquareMetre.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>A day of any year.</summary>
    public static string Day(DateOnly? day) => day?.ToString("MM-dd", CultureInfo.InvariantCulture) ?? "none";

    /// <summary>A way of keeping in words.</summary>
    public static string Name(InsideWay way) => way switch
    {
        InsideWay.Outside => "outside",
        InsideWay.Shut => "shut all year",
        InsideWay.Half => "half open all year",
        InsideWay.Full => "wide open all year",
        InsideWay.ByHand => "opened by hand",
        InsideWay.RowCover => "row cover at night",
    };

    /// <summary>A degree of opening in words.</summary>
    public static string Name(OpenWide wide) => wide switch { OpenWide.Shut => "shut", OpenWide.Half => "half open", OpenWide.Full => "wide open" };

    private static void Warmth(StringBuilder text, InsideReport report, UnitSystem units)
    {
        Table(text,
        [
            ["", "hottest", "coldest", "night gains", "at least", "too hot", "too cold", "frost days", "last frost", "first frost", "growth"],
            .. report.Ways.Select(way => (string[])
            [
                Name(way.Way), TapeText.Of(way.Highest, units), TapeText.Of(way.Lowest, units),
                way.Way == InsideWay.Outside ? "" : TapeText.Of(way.NightLift, units), way.Way == InsideWay.Outside ? "" : TapeText.Of(way.LeastNightLift, units),
                $"{way.HoursTooHot} h", $"{way.HoursTooCold} h", way.FrostDays.ToString(CultureInfo.InvariantCulture), Day(way.LastFrost), Day(way.FirstFrost), TapeText.Of(way.Growth, units),
            ]),
        ]);
        text.Append(GrowthNote).Append('\n').Append(Band(report, units)).Append('\n').Append(Measured).Append('\n').Append(Season(report, units)).Append("\n\n");
    }

    private static void Light(StringBuilder text, InsideReport report, UnitSystem units)
    {
        text.Append(LightNote(report)).Append('\n');
        int last = report.Across.Length - 1;
        Table(text,
        [
            ["month", "outside", "floor", "left edge", "middle", "right edge", "lost to shade"],
            .. report.Light.Select(month => (string[])
            [
                CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month.Month), Mol(month.Outside), Mol(month.Floor), Mol(month.Across[0]), Mol(month.Across[last / 2]), Mol(month.Across[last]),
                string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(Math.Round(month.LostToShade.Percent))} %"),
            ]),
        ]);
        text.Append(EdgeNote(report, units)).Append("\n\n");
    }

    private static void Air(StringBuilder text, InsideReport report, UnitSystem units)
    {
        text.Append("Air through what opens, 9 °F (5 K) warmer inside.\n");
        Table(text,
        [
            ["", "open", "in a calm", "in usual wind", "at most"],
            .. report.Air.Select(air => (string[])[Name(air.Wide), TapeText.Of(air.Free, units), Flow(report, air.ByWarmth, units), Flow(report, air.Usual, units), Flow(report, air.Most, units)]),
        ]);
        text.Append(Opens(report, units)).Append("\n\n");
    }

    private static void Headings(StringBuilder text, InsideReport report, UnitSystem units)
    {
        text.Append("How it could lie here, front and back alike:\n");
        foreach (string line in Lies(report, units)) text.Append("  ").Append(line).Append('\n');
        text.Append('\n');
    }

    private static void Sizes(StringBuilder text, InsideReport report, UnitSystem units)
    {
        foreach (string line in Machines(report, units)) text.Append(line).Append('\n');
    }

    private static void Table(StringBuilder text, string[][] rows)
    {
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Max(row => row[column].Length))];
        foreach (string[] row in rows)
        {
            text.Append(string.Join("  ", row.Select((cell, column) => column == 0 ? cell.PadRight(widths[column]) : cell.PadLeft(widths[column]))).TrimEnd()).Append('\n');
        }
    }
}
