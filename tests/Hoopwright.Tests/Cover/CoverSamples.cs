using System.Text;
using Hoopwright.Cover;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cover;

/// <summary>Invented tunnels, as typed, with the cover planned on them.</summary>
internal static class CoverSamples
{
    /// <summary>A 30 ft by 72 ft gothic tunnel with roll-up sides and a double door at the front.</summary>
    internal const string RollUp = """
        {
          "hoopwright": "1.0",
          "frame": { "span": "30 ft", "length": "72 ft", "bow": { "shape": "gothic", "sideHeight": "5 ft", "peakHeight": "12 ft 6 in" } },
          "ends": {
            "front": { "doors": [{ "kind": "double", "width": "8 ft", "height": "7 ft" }] },
            "back": {}
          },
          "sides": { "left": { "kind": "rollUp", "hipHeight": "4 ft" } }
        }
        """;

    /// <summary>A 14 ft by 24 ft round tunnel with fixed sides and no doors.</summary>
    internal const string Fixed = """
        {
          "hoopwright": "1.0",
          "frame": { "span": "14 ft", "length": "24 ft", "bow": { "shape": "round", "sideHeight": "0 in", "peakHeight": "7 ft" } }
        }
        """;

    /// <summary>
    /// The tunnel of Low-Investment Propagation/Winter Protection Structure, Horticulture Information Leaflet 404, North
    /// Carolina State Extension: 6 ft wide, 20 ft long, 3 ft high, 2x8 boards on four sides, film closes the ends.
    /// </summary>
    internal const string Leaflet404 = """
        {
          "hoopwright": "1.0",
          "frame": {
            "span": "6 ft", "length": "20 ft", "bowSpacing": "34.3 in", "bow": { "shape": "round", "sideHeight": "0 in", "peakHeight": "3 ft" },
            "bowTube": { "outside": "1.05 in", "wall": "0.113 in", "material": "pvc" }
          },
          "ground": { "anchor": "boards", "baseboard": { "size": "2x8" } },
          "ends": { "front": { "closing": "roofSheet", "baseboard": { "size": "2x8" } } }
        }
        """;

    internal static (Tunnel Tunnel, Answers Answers) Lay(string json)
    {
        PlanReading reading = PlanReader.Read(Encoding.UTF8.GetBytes(json));
        Assert.DoesNotContain(reading.Diagnostics, diagnostic => diagnostic.Severity == Severity.Error);
        return Lay(reading.Plan);
    }

    internal static (Tunnel Tunnel, Answers Answers) Lay(Plan plan)
    {
        var answers = new Answers(UnitSystem.UsCustomary);
        LayoutOutcome layout = TunnelPlanner.LayOut(plan, answers);
        Assert.DoesNotContain(layout.Diagnostics, diagnostic => diagnostic.Severity == Severity.Error);
        Assert.NotNull(layout.Tunnel);
        return (layout.Tunnel, answers);
    }

    internal static Plan Read(string json) => PlanReader.Read(Encoding.UTF8.GetBytes(json)).Plan;

    internal static CoverPlan Cover(string json) => Outcome(json).Plan;

    internal static CoverOutcome Outcome(string json)
    {
        (Tunnel tunnel, Answers answers) = Lay(json);
        return CoverPlanner.Plan(tunnel, answers);
    }

    internal static CoverPiece Piece(this CoverPlan cover, string id) => cover.Pieces.Single(piece => piece.Id == id);

    internal static FasteningRun Run(this CoverPlan cover, string id) => cover.Runs.Single(run => run.Id == id);
}
