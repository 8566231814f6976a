using Hoopwright.Inside.Air;

namespace Hoopwright.Inside.Light;

/// <summary>Light on the floor and on the film through the hours of a record.</summary>
internal sealed class YearLight
{
    // Part of light that bare ground and grass around throw back: from memory.
    private const double Albedo = 0.2;

    private YearLight(int hours, int strips)
    {
        FloorWPerM2 = new double[hours];
        CoverWPerM2 = new double[hours];
        PointWPerM2 = new float[hours * FloorLight.Across];
        PointWh = Rows(13, FloorLight.Across);
        FacetWh = Rows(13, strips + 2);
        OutsideWh = new double[13];
        UnshadedWh = new double[13];
    }

    /// <summary>Light on the floor hour by hour, mean over the width.</summary>
    internal double[] FloorWPerM2 { get; }

    /// <summary>Light on all film hour by hour, over a m² of floor.</summary>
    internal double[] CoverWPerM2 { get; }

    /// <summary>Light on each point across hour by hour, the points of an hour one after another.</summary>
    internal float[] PointWPerM2 { get; }

    /// <summary>Light on each point across in each month, Wh/m²; month 0 is the sum.</summary>
    internal double[][] PointWh { get; }

    /// <summary>Light on each strip of film, then on the front end and the back end, in each month, Wh/m²; month 0 is the sum.</summary>
    internal double[][] FacetWh { get; }

    /// <summary>Light on open level ground in each month, Wh/m²; month 0 is the sum.</summary>
    internal double[] OutsideWh { get; }

    /// <summary>Light on the floor in each month if nothing stood around, Wh/m²; month 0 is the sum.</summary>
    internal double[] UnshadedWh { get; }

    /// <summary>Works out a year.</summary>
    /// <param name="weather">The hours.</param>
    /// <param name="shape">The tunnel.</param>
    /// <param name="heading">How it lies.</param>
    /// <param name="floor">What reaches the floor.</param>
    /// <param name="kept">Part that frame and dirt leave.</param>
    internal static YearLight Of(HourlyWeather weather, InsideShape shape, Heading heading, FloorLight floor, double kept)
    {
        int strips = shape.XM.Length - 1;
        var year = new YearLight(weather.Count, strips);
        (double X, double Z)[] outward = [.. Enumerable.Range(0, strips).Select(shape.Outward)];
        double[] area = [.. Enumerable.Range(0, strips).Select(strip => shape.StripM(strip) * shape.LengthM), shape.SectionM2, shape.SectionM2];
        var here = new double[strips + 2];
        for (int hour = 0; hour < weather.Count; hour++)
        {
            double beam = weather.BeamLevel[hour], diffuse = weather.Diffuse[hour];
            if (beam + diffuse <= 0) continue;
            int month = weather.Month[hour];
            double around = weather.Anisotropy[hour] * diffuse, even = diffuse - around, directed = beam + around;
            Ray sun = heading.Towards(weather.SunAzimuthRad[hour], weather.SunElevationRad[hour]);
            double mean = 0, unshadedMean = 0;
            for (int point = 0; point < FloorLight.Across; point++)
            {
                (double through, double unshaded) = directed > 0 ? floor.Through(sun, point) : default;
                double light = kept * ((directed * through) + (even * floor.Diffuse[point]));
                year.PointWh[month][point] += light;
                year.PointWPerM2[(hour * FloorLight.Across) + point] = (float)light;
                mean += light;
                unshadedMean += kept * ((directed * unshaded) + (even * floor.DiffuseUnshaded[point]));
            }
            year.FloorWPerM2[hour] = mean / FloorLight.Across;
            year.UnshadedWh[month] += unshadedMean / FloorLight.Across;
            year.OutsideWh[month] += beam + diffuse;

            double normal = directed > 0 ? directed / sun.Z : 0, ground = (beam + diffuse) * Albedo, cover = 0;
            for (int facet = 0; facet < strips + 2; facet++)
            {
                (double cosine, double up) = facet < strips
                    ? ((outward[facet].X * sun.X) + (outward[facet].Z * sun.Z), outward[facet].Z)
                    : (facet == strips ? -sun.Y : sun.Y, 0);
                here[facet] = (normal * Math.Max(0, cosine)) + (even * (1 + up) / 2) + (ground * (1 - up) / 2);
                year.FacetWh[month][facet] += here[facet];
                cover += here[facet] * area[facet];
            }
            year.CoverWPerM2[hour] = cover / shape.FloorM2;
        }
        year.SumUp();
        return year;
    }

    /// <summary>Light on the floor in some months for another heading, Wh/m²: of each point across.</summary>
    internal static double[] PointsIn(HourlyWeather weather, Heading heading, FloorLight floor, double kept, Func<int, bool> months)
    {
        var points = new double[FloorLight.Across];
        for (int hour = 0; hour < weather.Count; hour++)
        {
            double beam = weather.BeamLevel[hour], diffuse = weather.Diffuse[hour];
            if (beam + diffuse <= 0 || !months(weather.Month[hour])) continue;
            double around = weather.Anisotropy[hour] * diffuse;
            Ray sun = heading.Towards(weather.SunAzimuthRad[hour], weather.SunElevationRad[hour]);
            for (int point = 0; point < points.Length; point++)
                points[point] += kept * (((beam + around) * (beam + around > 0 ? floor.Through(sun, point).Shaded : 0)) + ((diffuse - around) * floor.Diffuse[point]));
        }
        return points;
    }

    private static double[][] Rows(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new double[columns])];

    private void SumUp()
    {
        for (int month = 1; month <= 12; month++)
        {
            for (int point = 0; point < PointWh[0].Length; point++) PointWh[0][point] += PointWh[month][point];
            for (int facet = 0; facet < FacetWh[0].Length; facet++) FacetWh[0][facet] += FacetWh[month][facet];
            OutsideWh[0] += OutsideWh[month];
            UnshadedWh[0] += UnshadedWh[month];
        }
    }
}
