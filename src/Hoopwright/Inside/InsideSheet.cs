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
    public static ImmutableArray<Formula> Formulas { get; } =
    [
        FilmOptics.Transmission, FloorLight.Rule, AirExchange.Rule, AirExchange.Through, LogWind.Rule, WarmthExchange.Rule, HeatBalance.OutsideRule, HeatBalance.InsideRule, HeatBalance.WaterRule,
        MoistAir.Saturation, SkyInfrared.Rule, DiffusePart.Rule, HeaterSize.Rule, FanSize.Rule, FanSize.Thumb, InsideSeason.Rule,
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
        InsideBand band = report.Band;
        text.Append("Growth is in degree days by the middle between each day's highest and lowest; of a row cover all is of the air under it.\n");
        text.Append(CultureInfo.InvariantCulture, $"Not known: cracks, wind at the tunnel, the sky. With these at both ends of what is likely, opened by hand: hottest {TapeText.Of(band.HighestFrom, units)} to {TapeText.Of(band.HighestTo, units)}, coldest {TapeText.Of(band.LowestFrom, units)} to {TapeText.Of(band.LowestTo, units)}, nights {TapeText.Of(band.NightLiftFrom, units)} to {TapeText.Of(band.NightLiftTo, units)}.\n");
        text.Append(Measured).Append('\n');
        InsideSeason season = report.Season;
        text.Append(season.ShortDays > 0
            ? string.Create(CultureInfo.InvariantCulture, $"Days are shorter than ten hours from {Day(season.ShortFrom)} to {Day(season.ShortTo)}: hardy crops nearly stand still. ")
            : "No day is shorter than ten hours. ");
        text.Append(CultureInfo.InvariantCulture, $"On {season.HardyDays} days they grow: ten hours of day, and ground above {TapeText.Of(InsideSeason.WarmGround, units)}.\n");
        text.Append(CultureInfo.InvariantCulture, $"Water stands on the film in {report.WetFilmHours} of {report.Hours.Length} h.\n\n");
    }

    private static void Light(StringBuilder text, InsideReport report, UnitSystem units)
    {
        text.Append(CultureInfo.InvariantCulture, $"Light for plants, moles a m² and day. Film lets {report.FilmSquare.Percent:0} % through square to it, {report.FilmDiffuse.Percent:0} % from all over the sky; the frame takes {report.FrameShade.Percent:0} %.\n");
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
        text.Append(CultureInfo.InvariantCulture, $"Edges are {TapeText.OfRun(report.Across[0], units)} from the foot.\n\n");
    }

    private static void Air(StringBuilder text, InsideReport report, UnitSystem units)
    {
        text.Append("Air through what opens, 9 °F (5 K) warmer inside.\n");
        Table(text,
        [
            ["", "open", "in a calm", "in usual wind", "at most"],
            .. report.Air.Select(air => (string[])[Name(air.Wide), TapeText.Of(air.Free, units), Flow(air.ByWarmth), Flow(air.Usual), Flow(air.Most)]),
        ]);
        if (report.Openings.Length > 0) text.Append("What opens: ").AppendJoin("; ", report.Openings.Select(opening => $"{opening.Name} {TapeText.Of(opening.Free(OpenWide.Full), units)}")).Append(".\n");
        text.Append(CultureInfo.InvariantCulture, $"Wide open is {report.Air[^1].Free / report.Floor * 100:0} % of the floor; a rule asks for 15 to 20 % at the sides, and as much at the roof where there are roof vents.\n");
        text.Append("In usual wind by what was measured in film houses; at most by the rule for wind that blows square through.\n\n");

        string Flow(AirFlow flow) => string.Create(CultureInfo.InvariantCulture, $"{TapeText.Of(flow, units)} ({flow.CubicMetresPerSecond * 3600 / report.Volume.CubicMetres:0} changes/h)");
    }

    private static void Headings(StringBuilder text, InsideReport report, UnitSystem units)
    {
        HeadingStudy light = report.Headings.MaxBy(each => each.WinterLight)!, dark = report.Headings.MinBy(each => each.WinterLight)!;
        HeadingStudy air = report.Headings.MaxBy(each => each.AirAcross)!, storm = report.Headings.MinBy(each => each.StormAcross)!;
        double gain = (light.WinterLight.MolesPerSquareMetre / Math.Max(dark.WinterLight.MolesPerSquareMetre, 1e-9) - 1) * 100;
        text.Append("How it could lie here, front and back alike:\n");
        text.Append(CultureInfo.InvariantCulture, $"  most winter light on the floor: front {Faces(light)}, {gain:0.0} % more than front {Faces(dark)}\n");
        text.Append(CultureInfo.InvariantCulture, $"  most air through open sides on warm days: front {Faces(air)}, {TapeText.Of(air.AirAcross, units)} across\n");
        text.Append(CultureInfo.InvariantCulture, $"  least storm on the long sides: front {Faces(storm)}, {TapeText.Of(storm.StormAcross, units)} across in the windiest hours\n\n");

        static string Faces(HeadingStudy each) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(each.FrontFaces.Degrees):0}°");
    }

    private static void Sizes(StringBuilder text, InsideReport report, UnitSystem units)
    {
        HeaterSize heater = report.Heater;
        text.Append(CultureInfo.InvariantCulture, $"A heater that holds {TapeText.Of(heater.Inside, units)} at {TapeText.Of(heater.Outside, units)} outside: {TapeText.Of(heater.Whole, units)} ({TapeText.Of(heater.ThroughFilm, units)} through the film, {TapeText.Of(heater.WithAir, units)} with air).\n");
        if (report.HeaterMean > Power.Zero) text.Append(CultureInfo.InvariantCulture, $"Over the year it would give {TapeText.Of(report.HeaterMean, units)} in the mean, {report.HeaterMean.Watts * report.Hours.Length / 1e6:0.0} MWh in all.\n");
        text.Append(CultureInfo.InvariantCulture, $"Fans in place of open sides: {TapeText.Of(report.Fan.ByBalance, units)} for {TapeText.Of(report.Fan.Rise, units)} in the brightest hour; {TapeText.Of(report.Fan.ByRule, units)} by the rule of 8 ft³ a minute for each ft² of floor.\n");
    }

    private static void Table(StringBuilder text, string[][] rows)
    {
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Max(row => row[column].Length))];
        foreach (string[] row in rows)
        {
            text.Append(string.Join("  ", row.Select((cell, column) => column == 0 ? cell.PadRight(widths[column]) : cell.PadLeft(widths[column]))).TrimEnd()).Append('\n');
        }
    }

    private static string Mol(LightSum light) => light.MolesPerSquareMetre.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Day(DateOnly? day) => day?.ToString("MM-dd", CultureInfo.InvariantCulture) ?? "none";
}
