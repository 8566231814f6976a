using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Inside.Light;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Weather;

namespace Hoopwright.Inside;

/// <summary>Runs the years that a report is made of.</summary>
internal sealed class InsideStudy
{
    /// <summary>Moles of photons that plants use in a Wh of light: 0.45 of it, 4.57 µmol/J; McCree (1972), from memory.</summary>
    internal const double MolPerWh = 3600 * 0.45 * 4.57e-6;

    // What is not known is put in at both ends: wind at the tunnel by a third, a sky by 5 K.
    private const double LessWind = 0.7, MoreWind = 1.3, ColderSkyK = 5, WarmC = 20, StormPart = 0.01, UsualWarmerK = 5;

    private readonly InsideSetup _setup;
    private readonly HourlyWeather _weather;
    private readonly WeatherRecord _record;
    private readonly Place _place;
    private readonly YearLight _light;
    private readonly ImmutableArray<AirExchange> _exchanges;
    private readonly double _windFactor;
    private readonly List<WeatherDay> _days;
    private readonly float[] _outsideC;

    internal InsideStudy(InsideSetup setup, HourlyWeather weather, WeatherRecord record, Place place)
    {
        (_setup, _weather, _record, _place) = (setup, weather, record, place);
        _windFactor = setup.WindFactor(record.WindHeight.Metres);
        _exchanges = [.. Enum.GetValues<OpenWide>().Select(wide => new AirExchange(setup.Openings, wide))];
        _light = YearLight.Of(weather, setup.Shape, setup.Heading, Floor(setup.Heading), setup.Kept);
        _days = WeatherDay.Of(record);
        _outsideC = [.. weather.AirK.Select(kelvins => (float)(kelvins - 273.15))];
    }

    /// <summary>A year kept one way.</summary>
    internal InsideRun Run(HouseKeeping keeping, double windTimes = 1, double? leakPerHour = null) => InsideRun.Of(
        _weather, _light, leakPerHour is { } leak ? _setup.House with { LeakPerHour = leak } : _setup.House, _exchanges, _windFactor * windTimes, FilmWarmth.TakesUp * _setup.Layers, keeping);

    internal YearLight Light => _light;

    internal InsideReport Report(Answers answers)
    {
        var byHand = new HouseKeeping { VentAtK = _setup.VentAt.Kelvins, RowCover = _setup.InnerCover, HeatToK = _setup.HeatTo?.Kelvins ?? double.NaN };
        InsideRun shut = Run(new() { Always = OpenWide.Shut }), half = Run(new() { Always = OpenWide.Half }), full = Run(new() { Always = OpenWide.Full });
        InsideRun kept = Run(byHand), covered = Run(byHand with { RowCover = true, HeatToK = double.NaN });
        InsideRun calm = Run(byHand, LessWind, InsideDefaults.LeastLeak), windy = Run(byHand with { ColderSkyK = ColderSkyK }, MoreWind, InsideDefaults.MostLeak);
        InsideShape shape = _setup.Shape;
        InsideStats calmStats = Stats(InsideWay.ByHand, calm.AirC), windyStats = Stats(InsideWay.ByHand, windy.AirC);
        double brightest = _light.FloorWPerM2.Max(), lossWPerM2K = HeaterSize.LossWPerM2K(_setup.Layers, _setup.Film == FilmKind.Infrared);
        return new()
        {
            Place = _place,
            Weather = _record.Name,
            TypicalYear = _record.IsTypicalYear,
            Floor = Area.FromSquareMetres(shape.FloorM2),
            Cover = Area.FromSquareMetres(shape.CoverM2),
            Volume = Volume.FromCubicMetres(shape.VolumeM3),
            FilmSquare = Ratio.FromValue(_setup.Roof.At(1)),
            FilmDiffuse = Ratio.FromValue(_setup.Roof.Diffuse),
            FrameShade = Ratio.FromValue(_setup.FrameShade),
            Across = [.. Floor(_setup.Heading).XM.Select(Length.FromMetres)],
            Light = [.. Enumerable.Range(1, 12).Where(month => DaysOf(month) > 0).Select(Month)],
            Facets = Facets(),
            Headings = Headings(),
            Openings = _setup.Openings,
            Air = [.. Enum.GetValues<OpenWide>().Select(Change)],
            Ways =
            [
                Stats(InsideWay.Outside, _outsideC), Stats(InsideWay.Shut, shut.AirC), Stats(InsideWay.Half, half.AirC), Stats(InsideWay.Full, full.AirC),
                Stats(InsideWay.ByHand, kept.AirC), Stats(InsideWay.RowCover, covered.CropAirC),
            ],
            Band = new(windyStats.Highest, calmStats.Highest, windyStats.Lowest, calmStats.Lowest, windyStats.NightLift, calmStats.NightLift),
            Heater = _setup.HeaterSize,
            HeaterMean = Power.FromWatts(kept.Sums.Heater / _weather.Count * shape.FloorM2),
            Fan = FanSize.Of(brightest, HeatBalance.CropVapour(_setup.VentAt.Kelvins, _weather.PressurePa) * _setup.CropCover, shape.FloorM2, lossWPerM2K * shape.CoverM2),
            Season = InsideSeason.Of(_days, kept.GroundC, _place, _record.UtcOffset),
            WetFilmHours = kept.WetFilmHours,
            BalanceLeft = Ratio.FromValue(kept.Sums.Left),
            Hours = [.. Enumerable.Range(0, _weather.Count).Select(hour => Hour(kept, hour))],
            Days = [.. _days.Select(day => Day(day, kept, shut))],
            Rules = answers.Rules,
            Diagnostics = [],
        };
    }

    internal InsideStats Stats(InsideWay way, ReadOnlySpan<float> airC) => InsideStats.Of(way, _record, _days, airC, _outsideC, IsNorth, _setup.Limits);

    private bool IsNorth => _place.Latitude.Degrees >= 0;

    /// <summary>The four months around the shortest day.</summary>
    private bool IsWinter(int month) => IsNorth ? month is 11 or 12 or 1 or 2 : month is >= 5 and <= 8;

    private FloorLight Floor(Heading heading) => new(_setup.Shape, heading, _setup.Roof, _setup.End, new SiteShade(_setup.Tunnel.Plan.Site, _setup.Shape, heading, _setup.Roof.Diffuse));

    private int DaysOf(int month) => _days.Count(day => day.Date.Month == month);

    private MonthLight Month(int month)
    {
        int days = DaysOf(month);
        double[] points = _light.PointWh[month];
        double floor = points.Average();
        return new(
            month, Mol(_light.OutsideWh[month], days), Mol(floor, days), [.. points.Select(point => Mol(point, days))], Ratio.FromValue(_light.UnshadedWh[month] > 0 ? 1 - (floor / _light.UnshadedWh[month]) : 0));
    }

    private static LightSum Mol(double wattHours, int days) => LightSum.FromMolesPerSquareMetre(days == 0 ? 0 : wattHours / days * MolPerWh);

    private ImmutableArray<FacetLight> Facets()
    {
        InsideShape shape = _setup.Shape;
        int strips = shape.XM.Length - 1, winterDays = Enumerable.Range(1, 12).Where(IsWinter).Sum(DaysOf);
        return [.. Enumerable.Range(0, strips + 2).Select(facet =>
        {
            (double slope, double facing) = (90, _setup.Heading.FrontFacesDeg + (facet == strips ? 0 : 180));
            if (facet < strips)
            {
                (double x, double z) = shape.Outward(facet);
                (slope, facing) = (GeocentricSun.Deg(Math.Acos(Math.Clamp(z, -1, 1))), x < 0 ? _setup.Heading.LeftFacesDeg : _setup.Heading.RightFacesDeg);
            }
            return new FacetLight(
                facet < strips ? $"strip {facet + 1}" : facet == strips ? "front end" : "back end", Angle.FromDegrees(slope), Angle.FromDegrees(GeocentricSun.Wrapped(facing)),
                Mol(_light.FacetWh[0][facet], _days.Count), Mol(Enumerable.Range(1, 12).Where(IsWinter).Sum(month => _light.FacetWh[month][facet]), winterDays));
        })];
    }

    /// <summary>The tunnel turned by 15° from step to step, half way round: both ends count alike.</summary>
    private ImmutableArray<HeadingStudy> Headings()
    {
        int winterDays = Enumerable.Range(1, 12).Where(IsWinter).Sum(DaysOf);
        double[] sorted = [.. _weather.WindMps.Order()];
        double storm = sorted[(int)((sorted.Length - 1) * (1 - StormPart))];
        return [.. Enumerable.Range(0, 12).Select(step =>
        {
            var heading = new Heading(90 + (15 * step));
            double[] points = YearLight.PointsIn(_weather, heading, Floor(heading), _setup.Kept, IsWinter);
            double right = GeocentricSun.Rad(heading.RightFacesDeg), air = 0, pressed = 0;
            int warm = 0, stormy = 0;
            for (int hour = 0; hour < _weather.Count; hour++)
            {
                if (double.IsNaN(_weather.WindFromRad[hour])) continue;
                double across = _weather.WindMps[hour] * _windFactor * Math.Abs(Math.Cos(_weather.WindFromRad[hour] - right));
                if (_outsideC[hour] > WarmC) (air, warm) = (air + across, warm + 1);
                if (_weather.WindMps[hour] >= storm) (pressed, stormy) = (pressed + across, stormy + 1);
            }
            return new HeadingStudy(
                Angle.FromDegrees(heading.FrontFacesDeg), Mol(points.Average(), winterDays), Ratio.FromValue(points.Min() / Math.Max(points.Average(), 1e-9)),
                Speed.FromMetresPerSecond(warm > 0 ? air / warm : 0), Speed.FromMetresPerSecond(stormy > 0 ? pressed / stormy : 0));
        })];
    }

    private AirChange Change(OpenWide wide)
    {
        AirExchange exchange = _exchanges[(int)wide];
        double inside = 300, outside = inside - UsualWarmerK, wind = _weather.WindMps.Average() * _windFactor;
        double leak = _setup.LeakM3PerS;
        double usual = exchange.M3PerS(inside, outside, wind), square = Math.Max(exchange.ThroughM3PerS(wind, GeocentricSun.Rad(_setup.Heading.RightFacesDeg)), exchange.ThroughM3PerS(wind, GeocentricSun.Rad(_setup.Heading.FrontFacesDeg)));
        return new(
            wide, Area.FromSquareMetres(exchange.AreaM2), AirFlow.FromCubicMetresPerSecond(leak + exchange.M3PerS(inside, outside, 0)),
            AirFlow.FromCubicMetresPerSecond(leak + usual), AirFlow.FromCubicMetresPerSecond(leak + Math.Max(usual, square)));
    }

    private InsideHour Hour(InsideRun run, int hour) => new(
        new DateTimeOffset(_record.StartOf(hour), _record.UtcOffset), Temperature.FromKelvins(_weather.AirK[hour]), Temperature.FromCelsius(run.AirC[hour]), Temperature.FromCelsius(run.CropAirC[hour]),
        Temperature.FromCelsius(run.GroundC[hour]), Ratio.FromValue(run.Humidity[hour]), (OpenWide)run.Wide[hour], Ratio.FromValue(run.ChangesPerHour[hour]), LightSum.FromMolesPerSquareMetre(_light.FloorWPerM2[hour] * MolPerWh),
        Power.FromWatts(run.HeaterWPerM2[hour] * _setup.Shape.FloorM2));

    private InsideDay Day(WeatherDay day, InsideRun kept, InsideRun shut)
    {
        (double low, double high) = InsideStats.Range(_outsideC.AsSpan(day.First, day.Count));
        (double keptLow, double keptHigh) = InsideStats.Range(kept.AirC.AsSpan(day.First, day.Count));
        var light = new double[FloorLight.Across];
        for (int hour = day.First; hour < day.First + day.Count; hour++)
        {
            for (int point = 0; point < light.Length; point++) light[point] += _light.PointWPerM2[(hour * light.Length) + point];
        }
        (double shutLow, double shutHigh) = InsideStats.Range(shut.AirC.AsSpan(day.First, day.Count));
        return new(day.Date, Temperature.FromCelsius(low), Temperature.FromCelsius(high), Temperature.FromCelsius(keptLow), Temperature.FromCelsius(keptHigh), Temperature.FromCelsius(shutLow), Temperature.FromCelsius(shutHigh), [.. light.Select(watts => LightSum.FromMolesPerSquareMetre(watts * MolPerWh))]);
    }
}
