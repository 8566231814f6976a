using Hoopwright.Inside.Air;
using Hoopwright.Inside.Light;

namespace Hoopwright.Inside.Heat;

/// <summary>How a tunnel is kept over a year.</summary>
internal sealed record HouseKeeping
{
    /// <summary>How far it stands open in every hour; null when someone opens it by the warmth inside.</summary>
    internal OpenWide? Always { get; init; }

    /// <summary>Air inside at which it is opened a step further, K.</summary>
    internal double VentAtK { get; init; } = 297;

    /// <summary>Row cover over the crop at night.</summary>
    internal bool RowCover { get; init; }

    /// <summary>Temperature that a heater holds, K; not a number without one.</summary>
    internal double HeatToK { get; init; } = double.NaN;

    /// <summary>By how much the sky sends less than the weather says, K: what is not known of it.</summary>
    internal double ColderSkyK { get; init; }
}

/// <summary>A year inside, hour by hour.</summary>
internal sealed class InsideRun
{
    // Hours of the record's end that are run first, so that the ground begins as it would be.
    private const int RunInHours = 45 * 24;

    // Part of the light on the floor that crop and ground take up; from memory.
    private const double TakenUp = 0.8;

    private InsideRun(int hours) => (AirC, CropAirC, GroundC, Wide, HeaterWPerM2, ChangesPerHour, Humidity) = (new float[hours], new float[hours], new float[hours], new byte[hours], new float[hours], new float[hours], new float[hours]);

    internal float[] AirC { get; }

    /// <summary>Under the row cover where there is one.</summary>
    internal float[] CropAirC { get; }

    internal float[] GroundC { get; }

    /// <summary>How far it stood open: 0 shut, 1 half, 2 full.</summary>
    internal byte[] Wide { get; }

    internal float[] HeaterWPerM2 { get; }

    internal float[] ChangesPerHour { get; }

    /// <summary>Relative humidity inside, 0 to 1.</summary>
    internal float[] Humidity { get; }

    /// <summary>Hours in which water stood on the film.</summary>
    internal int WetFilmHours { get; private set; }

    internal HeatSums Sums { get; } = new();

    /// <summary>The worst balance of a node in any hour, W/m².</summary>
    internal double WorstLeft { get; private set; }

    internal static InsideRun Of(HourlyWeather weather, YearLight light, HeatHouse house, IReadOnlyList<AirExchange> exchanges, double windFactor, double filmTakesUp, HouseKeeping keeping)
    {
        int hours = weather.Count, runIn = Math.Min(RunInHours, hours);
        var run = new InsideRun(hours);
        var balance = new HeatBalance(house);
        double start = 0, deep = 0;
        for (int hour = 0; hour < hours; hour++) deep += weather.AirK[hour] / hours;
        for (int hour = hours - runIn; hour < hours; hour++) start += weather.AirK[hour] / runIn;
        var soil = new SoilColumn(start, deep);
        balance.Start(weather.AirK[hours - runIn]);
        double filmWater = 0, before = weather.AirK[hours - runIn];
        double stored = 0;
        for (int step = -runIn; step < hours; step++)
        {
            int hour = step < 0 ? step + hours : step;
            if (step == 0) stored = soil.Stored;
            soil.Begin();
            double infrared = weather.InfraredWPerM2[hour], sun = light.FloorWPerM2[hour];
            if (keeping.ColderSkyK > 0)
            {
                double sky = Math.Pow(infrared / WarmthExchange.StefanBoltzmann, 0.25) - keeping.ColderSkyK;
                infrared = WarmthExchange.StefanBoltzmann * sky * sky * sky * sky;
            }
            double wind = windFactor * weather.WindMps[hour];
            var asked = new HeatHour
            {
                OutsideK = weather.AirK[hour],
                WindMps = wind,
                SkyWPerM2 = infrared,
                Water = weather.Water[hour],
                PressurePa = weather.PressurePa,
                SunWPerM2 = TakenUp * sun,
                SunOnFilmWPerM2 = filmTakesUp * light.CoverWPerM2[hour],
                WindAtOpeningsMps = wind,
                SoilConductance = soil.ConductanceWPerM2K,
                SoilK = soil.AskedK,
                AirBeforeK = before,
                FilmWaterKg = filmWater,
                RowCover = keeping.RowCover && sun <= 0,
                HeatToK = keeping.HeatToK,
            };
            int wide = keeping.Always is { } always ? (int)always : 0;
            balance.Solve(asked with { Open = exchanges[wide] });
            while (keeping.Always is null && wide < 2 && balance.AirK > keeping.VentAtK && balance.AirK > weather.AirK[hour])
            {
                wide++;
                balance.Solve(asked with { Open = exchanges[wide] });
            }
            soil.End(balance.GroundK);
            before = balance.AirK;
            filmWater = Math.Clamp(filmWater + balance.CondensedKg, 0, HeatBalance.WetFilmKgPerM2 * house.CoverOverFloor);
            if (step < 0) continue;
            run.AirC[hour] = (float)(balance.AirK - 273.15);
            run.CropAirC[hour] = (float)(balance.CropAirK - 273.15);
            run.GroundC[hour] = (float)(balance.GroundK - 273.15);
            run.Wide[hour] = (byte)wide;
            run.HeaterWPerM2[hour] = (float)balance.HeaterWPerM2;
            run.ChangesPerHour[hour] = (float)(balance.ExchangeM3PerS / house.FloorM2 / house.HeightM * 3600);
            run.Humidity[hour] = (float)Math.Min(1, balance.Water / MoistAir.Saturated(balance.AirK, weather.PressurePa).Ratio);
            if (filmWater > 0) run.WetFilmHours++;
            double now = soil.Stored;
            run.Sums.Add(balance, asked.SunWPerM2 + asked.SunOnFilmWPerM2, soil.LostDownWPerM2, now - stored);
            stored = now;
            run.WorstLeft = Math.Max(run.WorstLeft, balance.LeftWPerM2);
        }
        return run;
    }
}
