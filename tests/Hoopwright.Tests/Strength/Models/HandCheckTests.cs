using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Models;

/// <summary>
/// Two tunnels worked out a second time apart from the program: loads by the standards' formulas on paper, and the bow by a plane frame
/// of another hand (190 chords, consistent geometric stiffness with that of the tie, elimination of the whole matrix).
/// </summary>
public sealed class HandCheckTests
{
    private const string Frame = "loads by hand, bow by an independent plane frame of second order, 190 chords", Round = "0.5 % of the greatest moment: film stands half a tube outside of the middle line, where the other hand puts its load";

    /// <summary>EN 1991-1-4, terrain 0, 28 m/s: qp 1205.5 Pa at 3.8 m, D + 1.35 W of a peaked bow taken as a vault, the windward side open, cpi 0.9·0.73.</summary>
    [Fact]
    public void Wind_past_an_open_side_on_a_peaked_bow_of_eight_metres()
    {
        BowDiagram worst = Worst(
            """
            "units": "metric", "site": { "groundSnow": "0.5 kPa", "wind": "28 m/s", "frostDepth": "40 cm", "soilClass": "sand" },
            "frame": { "span": "8 m", "length": "20 m", "bowSpacing": "1.5 m", "bays": "lastShort", "bow": { "shape": "peaked", "sideHeight": "1.5 m", "peakHeight": "3.8 m", "shoulderRadius": "700 mm" },
              "bowTube": { "outside": "60.3 mm", "wall": "2.5 mm", "yield": "235 MPa" }, "purlins": { "count": 3, "tube": { "outside": "1.315 in", "wall": "0.065 in" } } },
            "ground": { "anchor": "posts", "postEmbedment": "90 cm", "postConcrete": "cornersAndMiddle", "legBase": "spring", "postTube": { "outside": "73.03 mm", "wall": "2.11 mm" } },
            "ends": { "front": { "doors": [ { "kind": "double", "width": "2.4 m", "height": "2.2 m" } ] } },
            "sides": { "left": { "kind": "drop", "hipHeight": "1.4 m" }, "right": { "kind": "fixed" } }, "cover": { "thickness": "200 μm" },
            "loads": { "standard": "en1991", "terrain": "0" }
            """, UnitSystem.Metric);
        Assert.Equal("en-w-lift-wind-left-left-up-plus", worst.Code);
        Published.Check(Frame, "moment of the left foot, N·m", 6504, worst.LeftFoot.Turning.NewtonMetres, 33, Round);
        Published.Check(Frame, "moment of the right foot, N·m", -2191, worst.RightFoot.Turning.NewtonMetres, 66, "twice that at the far foot");
        Published.Check(Frame, "pull of the left foot, N", -10389, worst.LeftFoot.Up.Newtons, 30, "0.3 %");
        Published.Check(Frame, "pull of the right foot, N", -12292, worst.RightFoot.Up.Newtons, 60, "0.5 %");
        Published.Check(Frame, "left foot across, N", -8162, worst.LeftFoot.Across.Newtons, 40, "0.5 %");
        Published.Check(Frame, "moment of the left shoulder, N·m", 5585, worst.Points.Max(point => point.Moment.NewtonMetres), 33, Round);
        // 10 389 N over 0.75·1.1·235 MPa·454 mm², and 6504 N·m over 0.95·1.25·235 MPa·6300 mm³, by AISI S100-16 from memory.
        Published.Check(Frame, "part of the strength used", (10389 / 88016.0) + (6504 / 1758.0), worst.Points.Max(point => point.Utilisation.Value), 0.004 * 3.8, "0.4 %");
    }

    /// <summary>ASCE/SEI 7-22: pf = 0.7·0.85·45 psf, blown over a gothic bow, 1.2 D + S, the tie stretched.</summary>
    [Fact]
    public void Blown_snow_on_a_tied_gothic_bow_of_thirty_four_feet()
    {
        BowDiagram worst = Worst(
            """
            "units": "us", "site": { "groundSnow": "45 psf", "frostDepth": "48 in", "soilClass": "gravel" },
            "frame": { "span": "34 ft", "length": "48 ft", "bowSpacing": "4 ft", "bow": { "shape": "gothic", "sideHeight": "6 ft", "peakHeight": "17 ft" },
              "bowTube": { "outside": "2.875 in", "wall": "0.12 in", "yield": "50 ksi" }, "tie": { "height": "11 ft", "every": 1, "tube": { "outside": "1.66 in", "wall": "0.083 in" } },
              "purlins": { "count": 5, "tube": { "outside": "1.315 in", "wall": "0.065 in" } } },
            "ground": { "anchor": "posts", "postEmbedment": "48 in", "postConcrete": "all", "legBase": "spring", "postTube": { "outside": "3.5 in", "wall": "0.083 in" } },
            "cover": { "layers": 2, "inflated": true }, "loads": { "standard": "asce7-22", "exposure": "B", "heating": "heatedGreenhouse", "heatWatched": true }
            """, UnitSystem.UsCustomary);
        Assert.Equal("lrfd-3-snow-blown-left", worst.Code);
        Published.Check(Frame, "moment of the left foot, N·m", -4449, worst.LeftFoot.Turning.NewtonMetres, 25, Round);
        Published.Check(Frame, "push of the left foot, N", 2871, worst.LeftFoot.Up.Newtons, 30, "1 % of what the bare side carries");
        Published.Check(Frame, "push of the right foot, N", 7515, worst.RightFoot.Up.Newtons, 38, "0.5 %");
        Published.Check(Frame, "left foot across, N", 2481, worst.LeftFoot.Across.Newtons, 25, "1 %");
        Published.Check(Frame, "moment of the loaded rafter, N·m", 5041, worst.Points.Max(point => point.Moment.NewtonMetres), 126, "2.5 %: moments are looked at at nodes, and the greatest lies between two");
        double ridgeM = worst.Points.MaxBy(point => point.Place.Up.Metres)!.MovedAcross.Metres;
        Published.Check(Frame, "sway of the ridge, m", -0.1704, ridgeM, 0.003, "2 %, as far as meshes differ");
    }

    private static BowDiagram Worst(string fields, UnitSystem units) => StrengthPlanner.Plan(SamplePlans.LayOut(SamplePlans.FromJson(fields)), new Answers(units)).Worst!;
}
