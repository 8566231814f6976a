using Hoopwright.Inside.Air;
using Hoopwright.Inside.Light;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Inside;

/// <summary>Light on the floor and on the film.</summary>
public sealed class FloorLightTests
{
    private const string Sky = "sky seen from the bottom of a basin, cos² of its rim: Oke, Boundary Layer Climates, from memory";
    private const string Shadows = "length of shadows at noon of the shortest day, 1/tan of the sun's height, worked out by an independent program";

    private static readonly FilmOptics Film = new(0.89, 1);

    // A half circle of 3 m.
    private static readonly InsideShape HalfCircle = InsideShape.Of([.. Enumerable.Range(0, 49).Select(corner => (3 - (3 * Math.Cos(Math.PI * corner / 48)), 3 * Math.Sin(Math.PI * corner / 48)))], 30);

    [Fact]
    public void From_the_middle_of_a_half_circle_all_light_across_it_falls_square_on_the_film()
    {
        var heading = new Heading(180);
        FloorLight floor = Floor(HalfCircle, heading, new Site());
        foreach (double elevation in new[] { 5.0, 20, 45, 70, 90 })
        {
            // The tunnel lies north and south: the sun in the east shines across it.
            (double through, _) = floor.Through(heading.Towards(GeocentricSun.Rad(90), GeocentricSun.Rad(elevation)), FloorLight.Across / 2);
            Assert.Equal(0.89, through, 5e-4);
        }
        // Low along the axis it comes in by the upright end from two of three places, and through the roof nowhere.
        (double along, _) = floor.Through(heading.Towards(GeocentricSun.Rad(180), GeocentricSun.Rad(3)), FloorLight.Across / 2);
        Assert.Equal(Film.At(Math.Cos(GeocentricSun.Rad(3))), along, 1e-4);
    }

    [Fact]
    public void The_light_on_each_strip_is_that_of_the_tilted_plane()
    {
        var study = InsideSamples.Study(InsideSamples.Gothic);
        HourlyWeather weather = HourlyWeather.Of(InsideSamples.Year, InsideSamples.Year.Place!).Weather!;
        var heading = new Heading(180);
        var shape = InsideShape.Of(InsideSamples.Gothic);
        for (int strip = 0; strip < InsideShape.Strips; strip += 5)
        {
            (double x, double z) = shape.Outward(strip);
            double tilt = GeocentricSun.Deg(Math.Acos(z)), facing = x < 0 ? heading.LeftFacesDeg : heading.RightFacesDeg, sum = 0;
            for (int hour = 0; hour < weather.Count; hour++)
            {
                double global = weather.BeamLevel[hour] + weather.Diffuse[hour];
                if (global <= 0) continue;
                double zenith = 90 - GeocentricSun.Deg(weather.SunElevationRad[hour]), cosine = TiltedSky.CosIncidence(zenith, GeocentricSun.Deg(weather.SunAzimuthRad[hour]), tilt, facing);
                double beam = weather.BeamLevel[hour] > 0 ? weather.BeamLevel[hour] / Math.Cos(GeocentricSun.Rad(zenith)) : 0;
                var light = new SkyLight(beam, weather.Diffuse[hour], global);
                double outside = beam > 0 ? beam / weather.Anisotropy[hour] : 1367;
                sum += TiltedSky.BeamWPerM2(beam, cosine) + TiltedSky.GroundWPerM2(global, 0.2, tilt) + TiltedSky.HayDaviesWPerM2(light, outside, zenith, cosine, tilt);
            }
            Assert.Equal(sum, study.Light.FacetWh[0][strip], 1e-6 * sum);
        }
    }

    [Theory]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(40)]
    public void Hills_all_round_leave_the_published_part_of_the_sky(double rim)
    {
        var shade = new SiteShade(new Site { Horizon = [Point(0, rim), Point(120, rim), Point(240, rim)] }, HalfCircle, new Heading(180), Film.Diffuse);
        double open = 0;
        const int rings = 2000, parts = 12;
        for (int ring = 0; ring < rings; ring++)
            for (int part = 0; part < parts; part++)
                open += shade.Reaches(new Heading(180).Towards(2 * Math.PI * (part + 0.5) / parts, Math.Asin(Math.Sqrt((ring + 0.5) / rings))), 3, 0) / (rings * parts);
        Published.Check(Sky, $"sky seen under a rim of {rim}°", Math.Pow(Math.Cos(GeocentricSun.Rad(rim)), 2), open, 1e-3, "rings of the sky");
    }

    [Theory]
    [InlineData(46.83, -92.22, -6, 2.79)]
    [InlineData(42.93, -78.73, -5, 2.29)]
    [InlineData(33.63, -84.43, -5, 1.54)]
    public void At_noon_of_the_shortest_day_a_tree_shades_as_far_as_the_printed_shadow(double north, double east, double clock, double length)
    {
        var place = new Place(Angle.FromDegrees(north), Angle.FromDegrees(east), Length.Zero);
        SunDay day = SunAlmanac.Day(place, new DateOnly(2026, 12, 21), TimeSpan.FromHours(clock));
        SunPosition sun = SunAlmanac.At(place, day.Noon);
        Published.Check(Shadows, $"shadow over height at {north}° N", length, 1 / Math.Tan(sun.TrueElevation.Radians), 0.006, "the last printed digit");
        var heading = new Heading(180);
        Ray ray = heading.Towards(sun.Azimuth.Radians, sun.TrueElevation.Radians);
        Assert.Equal(0, Shade((length * 10) - 0.2).Reaches(ray, HalfCircle.SpanM / 2, 0));
        Assert.Equal(1, Shade((length * 10) + 0.2).Reaches(ray, HalfCircle.SpanM / 2, 0));

        SiteShade Shade(double distance) => new(new Site { Obstacles = [Tree(170, 190, distance, 10)] }, HalfCircle, heading, Film.Diffuse);
    }

    [Fact]
    public void A_tunnel_alongside_takes_light_from_low_on_its_side_only_and_lets_some_through()
    {
        var heading = new Heading(180);
        var shade = new SiteShade(new Site { NeighbourRight = new Written<Length>("2 m", Length.FromMetres(2)) }, HalfCircle, heading, Film.Diffuse);
        double low = shade.Reaches(heading.Towards(GeocentricSun.Rad(90), GeocentricSun.Rad(15)), 3, 0);
        Assert.True(low is > 0.4 and < 0.7, $"{low} of the light comes through both sides of the neighbour");
        Assert.Equal(1, shade.Reaches(heading.Towards(GeocentricSun.Rad(90), GeocentricSun.Rad(60)), 3, 0));
        Assert.Equal(1, shade.Reaches(heading.Towards(GeocentricSun.Rad(270), GeocentricSun.Rad(15)), 3, 0));
        // Nearly along the axis the line passes beyond the neighbour's end.
        Assert.Equal(1, shade.Reaches(heading.Towards(GeocentricSun.Rad(175), GeocentricSun.Rad(1)), 3, 0));
    }

    [Fact]
    public void More_strips_across_move_the_light_on_the_floor_by_less_than_two_in_a_thousand()
    {
        InsideShape coarse = Semi(24), fine = Semi(96);
        double[] one = Floor(coarse, new Heading(90), new Site()).Diffuse, other = Floor(fine, new Heading(90), new Site()).Diffuse;
        Assert.Equal(1, one.Average() / other.Average(), 2e-3);

        static InsideShape Semi(int strips) => InsideShape.Of([.. Enumerable.Range(0, strips + 1).Select(corner => (3 - (3 * Math.Cos(Math.PI * corner / strips)), 3 * Math.Sin(Math.PI * corner / strips)))], 30);
    }

    private static FloorLight Floor(InsideShape shape, Heading heading, Site site) => new(shape, heading, Film, Film, new SiteShade(site, shape, heading, Film.Diffuse));

    private static HorizonPoint Point(double direction, double rises) => new() { Direction = Written(direction), Rises = Written(rises) };

    private static Obstacle Tree(double from, double to, double distance, double height) => new()
    {
        From = Written(from),
        To = Written(to),
        Distance = new Written<Length>("", Length.FromMetres(distance)),
        Height = new Written<Length>("", Length.FromMetres(height)),
    };

    private static Written<Angle> Written(double degrees) => new("", Angle.FromDegrees(degrees));
}
