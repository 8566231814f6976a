using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Kept;

/// <summary>Invented tunnels that between them come by most rules for loads and checks, each short, so that it is soon worked out.</summary>
internal static class KeptTunnels
{
    private const string TwoLeaves = "{ \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\", \"ventHeight\": \"1 ft\" }";

    private static readonly Dictionary<string, Func<Plan>> Plans = new()
    {
        ["round-on-legs"] = () => SamplePlans.Simple(length: "24 ft",
            frame: "\"bowSpacing\": \"4 ft\", \"tie\": { \"height\": \"8 ft\", \"every\": 2 }, \"bowTube\": { \"outside\": \"1.9 in\", \"wall\": \"0.095 in\", \"yield\": \"50 ksi\" }",
            rest: "\"site\": { \"wind\": \"105 mph\", \"groundSnow\": \"30 psf\", \"neighbourLeft\": \"6 ft\", \"soilClass\": \"sand\", \"frostDepth\": \"3 ft\" }, "
                + "\"loads\": { \"standard\": \"asce7-16\", \"exposure\": \"C\", \"cropLoad\": \"4 psf\", \"cropLine\": \"3 lbf/ft\", \"cropHungOn\": \"ties\", \"slidesFree\": true }, "
                + $"\"sides\": {{ \"left\": {{ \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" }}, \"right\": {{ \"kind\": \"fixed\" }} }}, \"ends\": {{ \"front\": {{ \"doors\": [ {TwoLeaves} ] }}, \"back\": {{ \"closing\": \"framed\" }} }}"),
        ["round-from-the-ground"] = () => SamplePlans.Simple(span: "24 ft", length: "20 ft", bow: "\"shape\": \"round\", \"sideHeight\": \"0 ft\", \"peakHeight\": \"9 ft\"",
            frame: "\"bowSpacing\": \"5 ft\", \"bowTube\": { \"outside\": \"2.375 in\", \"wall\": \"12 ga\", \"yield\": \"50 ksi\" }, \"purlins\": { \"count\": 1 }",
            rest: "\"site\": { \"wind\": \"95 mph\", \"groundSnow\": \"40 psf\", \"soilClass\": \"clay\", \"elevation\": \"3000 ft\" }, \"ground\": { \"postConcrete\": \"none\", \"legBase\": \"spring\" }, "
                + "\"loads\": { \"standard\": \"asce7-22\", \"riskCategory\": \"II\", \"exposure\": \"B\", \"winterWind\": \"0.6\", \"slidesFree\": true, \"heating\": \"aboveFreezing\", \"roofExposure\": \"exposed\", \"snowDesignFor\": 25 }, "
                + "\"sides\": { \"left\": { \"kind\": \"fixed\" } }, \"ends\": { \"front\": { \"closing\": \"open\" }, \"back\": { \"closing\": \"framed\" } }"),
        ["gothic-on-a-hill"] = () => SamplePlans.Simple(span: "26 ft", length: "19 ft", bow: "\"shape\": \"gothic\", \"sideHeight\": \"5 ft\", \"peakHeight\": \"13 ft\"",
            frame: "\"bowSpacing\": \"4 ft\", \"bays\": \"lastShort\", \"purlins\": { \"count\": 3 }, \"bowPieces\": 3",
            rest: "\"site\": { \"wind\": \"120 mph\", \"groundSnow\": \"25 psf\", \"soilClass\": \"gravel\", \"fallAlong\": \"2 %\", \"neighbourRight\": \"12 ft\" }, \"ground\": { \"postConcrete\": \"all\", \"legBase\": \"fixed\" }, "
                + "\"cover\": { \"layers\": 2, \"inflated\": true }, "
                + "\"loads\": { \"standard\": \"asce7-16\", \"riskCategory\": \"III\", \"exposure\": \"D\", \"hillFactor\": \"1.2\", \"heating\": \"heatedGreenhouse\", \"heatWatched\": true, \"roofExposure\": \"sheltered\", \"windGivenFor\": 300, \"snowGivenFor\": 30 }, "
                + "\"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"5 ft\" } }, \"ends\": { \"front\": { \"postSize\": \"4x6\", \"woodSpecies\": \"douglasFirLarch\", \"woodGrade\": \"no1\", \"postTop\": \"bracket\", \"doors\": [ { \"kind\": \"side\", \"width\": \"3 ft\", \"height\": \"6 ft 8 in\", \"centre\": \"8 ft\" } ] }, \"back\": { \"closing\": \"roofSheet\" } }"),
        ["peaked-steep"] = () => SamplePlans.Simple(span: "30 ft", length: "18 ft", bow: "\"shape\": \"peaked\", \"sideHeight\": \"6 ft\", \"peakHeight\": \"15 ft\"",
            frame: "\"bowSpacing\": \"6 ft\", \"bowTube\": { \"outside\": \"3 in\", \"wall\": \"11 ga\", \"form\": \"square\", \"yield\": \"50 ksi\" }, \"tie\": { \"height\": \"9 ft\", \"every\": 1 }",
            rest: "\"site\": { \"wind\": \"100 mph\", \"groundSnow\": \"20 psf\", \"soilClass\": \"sedimentaryRock\" }, "
                + "\"loads\": { \"standard\": \"asce7-22\", \"riskCategory\": \"I\", \"exposure\": \"C\", \"windDesignFor\": 100, \"cropLoad\": \"3 psf\", \"cropLine\": \"2 lbf/ft\", \"shutBeforeStorms\": true, \"heating\": \"heated\" }, "
                + "\"sides\": { \"left\": { \"kind\": \"fixed\" }, \"right\": { \"kind\": \"drop\", \"hipHeight\": \"6 ft\" } }, \"ends\": { \"front\": { \"woodSpecies\": \"hemFir\", \"woodGrade\": \"no2\", \"doors\": [ { \"kind\": \"overhead\", \"width\": \"10 ft\", \"height\": \"9 ft\" } ] } }"),
        ["peaked-low"] = () => SamplePlans.Simple(span: "20 ft", length: "40 ft", bow: "\"shape\": \"peaked\", \"sideHeight\": \"7 ft\", \"peakHeight\": \"10 ft\"",
            frame: "\"bowSpacing\": \"8 ft\", \"purlins\": { \"count\": 1 }",
            rest: "\"site\": { \"wind\": \"90 mph\", \"groundSnow\": \"10 psf\", \"soilClass\": \"soft\" }, \"loads\": { \"standard\": \"asce7-16\", \"riskCategory\": \"I\", \"exposure\": \"B\", \"slidesFree\": true, \"snowVariation\": \"0.5\", \"snowDesignFor\": 100, \"person\": \"200 lbf\", \"buildingWind\": \"0.7\" }, "
                + "\"sides\": { \"left\": { \"kind\": \"rollUp\", \"hipHeight\": \"6 ft\" } }, \"ends\": { \"front\": { \"woodSpecies\": \"sprucePineFir\", \"woodGrade\": \"no3\", \"withoutGirts\": true, \"doors\": [ { \"kind\": \"sliding\", \"width\": \"6 ft\", \"height\": \"7 ft\" } ] } }"),
        ["measured"] = () => SamplePlans.Simple(span: "18 ft", length: "16 ft",
            bow: "\"shape\": \"offsets\", \"offsets\": [ { \"across\": \"0 ft\", \"height\": \"0 ft\" }, { \"across\": \"2 in\", \"height\": \"3 ft\" }, { \"across\": \"3 ft\", \"height\": \"7 ft\" }, { \"across\": \"9 ft\", \"height\": \"9 ft 6 in\" }, { \"across\": \"15 ft\", \"height\": \"7 ft 2 in\" }, { \"across\": \"17 ft 9 in\", \"height\": \"3 ft 4 in\" }, { \"across\": \"18 ft\", \"height\": \"0 ft\" } ]",
            frame: "\"bowSpacing\": \"4 ft\"",
            rest: "\"site\": { \"wind\": \"105 mph\", \"groundSnow\": \"15 psf\", \"neighbourLeft\": \"3 ft\", \"neighbourRight\": \"18 ft\" }, \"loads\": { \"standard\": \"asce7-16\", \"exposure\": \"C\", \"slidesFree\": false }, \"sides\": { \"left\": { \"kind\": \"fixed\" } }"),
        ["round-by-en"] = () => Metric("\"shape\": \"round\", \"sideHeight\": \"1.2 m\", \"peakHeight\": \"3.4 m\"",
            "\"wind\": \"27 m/s\", \"groundSnow\": \"0.8 kPa\", \"neighbourLeft\": \"2 m\", \"elevation\": \"400 m\", \"soilClass\": \"gravel\"",
            "\"terrain\": \"I\", \"cropLoad\": \"0.15 kPa\", \"windGivenFor\": 50, \"windDesignFor\": 10, \"snowDesignFor\": 10, \"roofExposure\": \"exposed\"", "\"left\": { \"kind\": \"rollUp\", \"hipHeight\": \"1.1 m\" }"),
        ["peaked-by-en"] = () => Metric("\"shape\": \"peaked\", \"sideHeight\": \"2 m\", \"peakHeight\": \"4 m\", \"shoulderRadius\": \"600 mm\"",
            "\"wind\": \"24 m/s\", \"groundSnow\": \"1.2 kPa\", \"neighbourRight\": \"4 m\", \"soilClass\": \"sand\"",
            "\"terrain\": \"III\", \"hillFactor\": \"1.1\", \"slidesFree\": false, \"roofExposure\": \"sheltered\", \"heating\": \"heated\"", "\"left\": { \"kind\": \"fixed\" }"),
        ["gothic-by-en"] = () => Metric("\"shape\": \"gothic\", \"sideHeight\": \"1.5 m\", \"peakHeight\": \"4 m\"",
            "\"wind\": \"30 m/s\", \"groundSnow\": \"0.4 kPa\", \"soilClass\": \"clay\"",
            "\"terrain\": \"0\", \"snowGivenFor\": 20, \"cropLine\": \"0.1 kN/m\", \"shutBeforeStorms\": true", "\"left\": { \"kind\": \"drop\", \"hipHeight\": \"1.4 m\" }, \"right\": { \"kind\": \"fixed\" }"),
    };

    /// <summary>Their names.</summary>
    public static IEnumerable<string> Names => Plans.Keys;

    /// <summary>One of them, laid out.</summary>
    public static Tunnel Of(string name) => SamplePlans.LayOut(Plans[name]());

    private static Plan Metric(string bow, string site, string loads, string sides) => SamplePlans.FromJson(
        $$"""
        "units": "metric", "site": { {{site}} },
        "frame": { "span": "8 m", "length": "9 m", "bowSpacing": "1.5 m", "bow": { {{bow}} },
          "bowTube": { "outside": "60 mm", "wall": "2.5 mm", "yield": "355 MPa" }, "tie": { "height": "2.6 m", "every": 1, "tube": { "outside": "42 mm", "wall": "2 mm" } } },
        "ends": { "front": { "postSize": "95x95 mm", "doors": [ { "kind": "double", "width": "2.4 m", "height": "2.1 m" } ] } },
        "loads": { "standard": "en1991", {{loads}} }, "sides": { {{sides}} }
        """);
}
