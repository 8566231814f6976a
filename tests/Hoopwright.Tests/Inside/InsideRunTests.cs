using CsCheck;
using Hoopwright.Inside;
using Hoopwright.Inside.Air;
using Hoopwright.Inside.Heat;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sun;
using Hoopwright.Tests.Weather;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Inside;

/// <summary>What must hold of a year inside, whatever the tunnel.</summary>
public sealed class InsideRunTests
{
    private static readonly Gen<string> Rules = Gen.Select(Gen.Int[0, 100], Gen.Int[3, 30], Gen.Bool, Gen.Int[1, 2], Gen.Int[0, 359]).Select((crop, leak, infrared, layers, faces) =>
        $$"""
        "inside": { "cropCover": "{{crop}} %", "leak": "{{leak / 10}}.{{leak % 10}}", "film": "{{(infrared ? "infrared" : "plain")}}" },
        "cover": { "layers": {{layers}} }, "site": { "frontFaces": "{{faces}}°" }
        """);

    [Fact]
    public void More_open_never_raises_the_peak() => Gen.Select(Rules, Gen.Int[30, 50]).Sample(
        (rules, hipInches) =>
        {
            InsideStudy study = InsideSamples.Study(InsideSamples.Round($"{hipInches} in", rules)), higher = InsideSamples.Study(InsideSamples.Round($"{hipInches + 6} in", rules));
            float shut = Peak(study, OpenWide.Shut), half = Peak(study, OpenWide.Half), full = Peak(study, OpenWide.Full);
            Assert.True(shut > half && half > full, $"{shut} shut, {half} half, {full} open, with {rules}");
            Assert.True(Peak(higher, OpenWide.Half) <= half && Peak(higher, OpenWide.Full) <= full, $"A higher side is hotter, with {rules}");
        }, iter: 12);

    [Fact]
    public void What_comes_in_goes_out_or_is_kept() => Gen.Select(Rules, Gen.Bool, Gen.Bool).Sample(
        (rules, covered, heated) =>
        {
            InsideStudy study = InsideSamples.Study(InsideSamples.Round("4 ft", rules));
            foreach (OpenWide? always in new OpenWide?[] { null, OpenWide.Shut, OpenWide.Full })
            {
                InsideRun run = study.Run(new() { Always = always, RowCover = covered, HeatToK = heated ? 278 : double.NaN });
                Assert.True(run.Sums.Left < 1e-6, $"{run.Sums.Left:E2} of the heat is lost, with {rules}");
                Assert.True(run.WorstLeft < 1e-6, $"In an hour {run.WorstLeft:E2} W/m² are left over, with {rules}");
            }
        }, iter: 8);

    [Fact]
    public void Whatever_the_weather_every_hour_finds_its_balance() => Gen.Select(Rules, Gen.UInt).Sample(
        (rules, start) =>
        {
            uint state = start | 1;
            InsideStudy study = InsideSamples.Study(InsideSamples.Round("4 ft", rules), changed: Wild);
            foreach (HouseKeeping keeping in new HouseKeeping[] { new(), new() { RowCover = true, HeatToK = 290 }, new() { Always = OpenWide.Full, ColderSkyK = 5 } })
            {
                InsideRun run = study.Run(keeping);
                Assert.All(run.AirC, air => Assert.InRange(air, -80, 120));
                Assert.All(run.Humidity, humidity => Assert.InRange(humidity, 0, 1));
                Assert.True(run.WorstLeft < 1e-6 && run.Sums.Left < 1e-6, $"{run.WorstLeft:E2} W/m² left over in an hour, {run.Sums.Left:E2} of all, with {rules}");
            }

            // Air, wind, sky and vapour leap from hour to hour over all that weather has had.
            void Wild(HourlyWeather weather)
            {
                for (int hour = 0; hour < weather.Count; hour++)
                {
                    weather.AirK[hour] = 215 + (Next() * 115);
                    weather.WindMps[hour] = Next() < 0.2 ? 0 : Next() * 50;
                    weather.InfraredWPerM2[hour] = 80 + (Next() * 400);
                    weather.Water[hour] = Next() * MoistAir.Saturated(weather.AirK[hour], weather.PressurePa).Ratio;
                }
            }

            double Next()
            {
                state ^= state << 13;
                state ^= state >> 17;
                state ^= state << 5;
                return state / (double)uint.MaxValue;
            }
        }, iter: 6);

    [Fact]
    public void North_and_south_mirrored_at_the_equator_the_year_is_the_same()
    {
        var equator = new Place(Angle.FromDegrees(0), Angle.FromDegrees(-76.5), Length.FromMetres(250));
        string[] header = [.. InventedWeather.Header];
        header[0] = header[0].Replace("42.50", "0.00", StringComparison.Ordinal);
        WeatherRecord year = WeatherReader.Read(InventedWeather.Epw(InventedWeather.Rows(2026, equator), header)).Record!;
        foreach (string faces in new[] { "E", "N" })
        {
            Tunnel tunnel = InsideSamples.Round("4 ft", $"\"site\": {{ \"frontFaces\": \"{faces}\" }}");
            InsideStudy one = InsideSamples.Study(tunnel, year), other = InsideSamples.Study(tunnel, year, changed: Mirror);
            double[] points = one.Light.PointWh[0], mirrored = other.Light.PointWh[0];
            // Lying east and west the mirror swaps left and right, lying north and south both ends.
            for (int point = 0; point < points.Length; point++) Assert.Equal(points[point], mirrored[faces == "E" ? points.Length - 1 - point : point], 1e-6 * points[point]);
            InsideRun here = one.Run(new()), there = other.Run(new());
            Assert.All(here.AirC.Zip(there.AirC), pair => Assert.Equal(pair.First, pair.Second, 1e-3));
            // Over a year the sun is as long in the north as in the south: both halves of the floor get nearly the same.
            if (faces == "E") Assert.Equal(1, points[0] / points[^1], 0.02);
        }

        static void Mirror(HourlyWeather weather)
        {
            for (int hour = 0; hour < weather.Count; hour++) weather.SunAzimuthRad[hour] = Math.PI - weather.SunAzimuthRad[hour];
        }
    }

    [Fact]
    public void A_heater_holds_what_it_is_to_hold_and_a_row_cover_keeps_the_crop_warmer()
    {
        InsideStudy study = InsideSamples.Study(InsideSamples.Gothic);
        InsideRun plain = study.Run(new()), heated = study.Run(new() { HeatToK = 283.15 }), covered = study.Run(new() { RowCover = true });
        Assert.True(plain.AirC.Min() < 9);
        Assert.Equal(10, heated.AirC.Min(), 1e-3);
        Assert.True(heated.Sums.Heater > 0 && plain.Sums.Heater == 0);
        Assert.True(covered.CropAirC.Min() > plain.AirC.Min() + 1);
    }

    [Fact]
    public void Film_that_holds_warmth_back_and_a_second_film_make_nights_warmer()
    {
        float plain = ShutLow("plain", 1), infrared = ShutLow("infrared", 1), two = ShutLow("plain", 2);
        Assert.True(infrared > plain && two > plain, $"{plain} plain, {infrared} infrared, {two} two films");

        static float ShutLow(string film, int layers) =>
            InsideSamples.Study(InsideSamples.Round("4 ft", $"\"inside\": {{ \"film\": \"{film}\" }}, \"cover\": {{ \"layers\": {layers} }}")).Run(new() { Always = OpenWide.Shut }).AirC.Min();
    }

    [Fact]
    public void The_ground_keeps_the_heat_that_its_surface_takes_in()
    {
        var soil = new SoilColumn(285, 283);
        double before = soil.Stored;
        soil.Begin();
        double into = soil.ConductanceWPerM2K * (300 - soil.AskedK);
        soil.End(300);
        Assert.True(into > 0);
        Assert.Equal(into, soil.Stored - before + soil.LostDownWPerM2, 1e-6);
    }

    [Fact]
    public void Planes_of_one_temperature_under_a_sky_as_warm_exchange_nothing()
    {
        foreach (FilmWarmthRays[] films in new FilmWarmthRays[][] { [FilmWarmthRays.Plain], [FilmWarmthRays.RowCover, FilmWarmthRays.Plain], [FilmWarmthRays.RowCover, FilmWarmthRays.Wet, FilmWarmthRays.Infrared] })
        {
            var rays = new WarmthExchange(films);
            for (int plane = 0; plane <= films.Length; plane++)
                Assert.Equal(0, rays.FromSky[plane] + Enumerable.Range(0, films.Length + 1).Sum(other => rays.Gain[plane, other]), 1e-12);
        }
    }

    private static float Peak(InsideStudy study, OpenWide wide) => study.Run(new() { Always = wide }).AirC.Max();
}
