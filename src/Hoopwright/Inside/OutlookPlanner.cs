using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Inside.Light;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;

namespace Hoopwright.Inside;

/// <summary>Works out what a plan alone tells of the climate inside.</summary>
internal static class OutlookPlanner
{
    // Warm air outside, and how much warmer it is inside where only the air is asked for.
    private const double OutsideK = 295, UsualWarmerK = 5, MostRiseK = 200;

    /// <summary>For a tunnel. Never throws for one that was laid out.</summary>
    public static InsideOutlook Plan(Tunnel tunnel)
    {
        var answers = new Answers(tunnel.Units);
        InsideSetup setup = InsideSetup.Of(tunnel, answers);
        InsideShape shape = setup.Shape;
        Site site = tunnel.Plan.Site;
        Place? place = site is { Latitude: { } north, Longitude: { } east } ? new Place(north.Value, east.Value, site.Elevation?.Value ?? Length.Zero) : null;
        YearLight? light = null;
        if (place is not null)
        {
            var floor = new FloorLight(shape, setup.Heading, setup.Roof, setup.End, new SiteShade(site, shape, setup.Heading, setup.Roof.Diffuse));
            light = YearLight.Of(ClearYear.Of(place), shape, setup.Heading, floor, setup.Kept);
        }
        double lossWPerM2K = HeaterSize.LossWPerM2K(setup.Layers, setup.Film == FilmKind.Infrared);
        Sunlit? brightest = light is null ? null : new Sunlit(
            light.FloorWPerM2.Max(), HeatBalance.CropVapour(setup.VentAt.Kelvins, SunAlmanac.UsualPressure(place!.Elevation).Pascals) * setup.CropCover, shape.FloorM2, lossWPerM2K * shape.CoverM2);
        return new InsideOutlook
        {
            Place = place,
            Floor = Area.FromSquareMetres(shape.FloorM2),
            Cover = Area.FromSquareMetres(shape.CoverM2),
            Volume = Volume.FromCubicMetres(shape.VolumeM3),
            FilmSquare = Ratio.FromValue(setup.Roof.At(1)),
            FilmDiffuse = Ratio.FromValue(setup.Roof.Diffuse),
            FrameShade = Ratio.FromValue(setup.FrameShade),
            Openings = setup.Openings,
            Air = [.. Enum.GetValues<OpenWide>().Select(wide => Calm(setup, wide, brightest))],
            Light = light is null ? [] : [.. Enumerable.Range(1, 12).Select(month => Month(light, place!, month))],
            Heater = setup.HeaterSize,
            FanByRule = FanSize.ByThumb(shape.FloorM2),
            FanByBalance = brightest is { } sun ? AirFlow.FromCubicMetresPerSecond(FanSize.FlowM3PerS(sun.FloorWPerM2, sun.Vapour, sun.FloorM2, sun.LossWPerK, FanSize.UsualRiseK)) : null,
            Rules = answers.Rules,
            Assumptions = answers.Assumptions,
        };
    }

    /// <summary>The brightest hour, as the balance of a vented house takes it.</summary>
    private readonly record struct Sunlit(double FloorWPerM2, double Vapour, double FloorM2, double LossWPerK);

    private static CalmAir Calm(InsideSetup setup, OpenWide wide, Sunlit? brightest)
    {
        var exchange = new AirExchange(setup.Openings, wide);
        double FlowM3PerS(double riseK) => setup.LeakM3PerS + exchange.M3PerS(OutsideK + riseK, OutsideK, 0);
        return new(
            wide, Area.FromSquareMetres(exchange.AreaM2), AirFlow.FromCubicMetresPerSecond(FlowM3PerS(UsualWarmerK)),
            brightest is { } sun ? TemperatureDifference.FromKelvins(RiseK(sun, FlowM3PerS)) : null);
    }

    // The warmer, the more air passes and the less the sun could warm it: one rise fits.
    private static double RiseK(Sunlit sun, Func<double, double> flowM3PerS)
    {
        (double low, double high) = (0, MostRiseK);
        for (int halving = 0; halving < 50; halving++)
        {
            double middle = (low + high) / 2;
            if (FanSize.RiseK(sun.FloorWPerM2, sun.Vapour, sun.FloorM2, sun.LossWPerK, flowM3PerS(middle)) > middle) low = middle;
            else high = middle;
        }
        return high;
    }

    private static ClearMonth Month(YearLight light, Place place, int month)
    {
        double floor = light.PointWh[month].Average(), unshaded = light.UnshadedWh[month];
        return new(
            month, SunAlmanac.Day(place, ClearYear.Day(month), ClearYear.Clock(place)).DayLength, LightSum.FromMolesPerSquareMetre(light.OutsideWh[month] * InsideStudy.MolPerWh),
            LightSum.FromMolesPerSquareMetre(floor * InsideStudy.MolPerWh), Ratio.FromValue(unshaded > 0 ? 1 - (floor / unshaded) : 0));
    }
}
