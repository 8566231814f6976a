using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>Works out every load case of a tunnel, and how they are taken together.</summary>
public static class LoadPlanner
{
    /// <summary>
    /// Every load case. Never throws for a tunnel that was laid out. Where the plan gives no ground snow or no wind, the cases
    /// are there for a snow or wind of any size, and nothing says what the site asks.
    /// </summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static TunnelLoads Plan(Tunnel tunnel, Answers answers)
    {
        answers.Take("cover.thickness", LayoutDefaults.FilmThickness(tunnel.Units), tunnel.Plan.Cover.Thickness);
        answers.Take("cover.layers", LayoutDefaults.FilmLayers, tunnel.Plan.Cover.Layers);
        answers.Take("site.neighbourLeft", LoadDefaults.Neighbour, tunnel.Plan.Site.NeighbourLeft?.Text);
        answers.Take("site.neighbourRight", LoadDefaults.Neighbour, tunnel.Plan.Site.NeighbourRight?.Text);
        var site = new LoadSite(tunnel, answers);
        List<LoadCase> cases =
        [
            .. OtherCases.Dead(tunnel, site), .. OtherCases.Crop(tunnel, answers, site), .. SnowCases.Of(tunnel, site), .. WindCases.Of(tunnel, site),
            .. OtherCases.Temperature(tunnel, answers), .. OtherCases.Person(tunnel, answers), .. BuildingCases.Of(tunnel, site),
        ];
        HashSet<string> codes = [.. cases.Select(each => each.Code)];
        return new TunnelLoads
        {
            Standard = site.Standard,
            RiskCategory = site.Risk,
            GroundSnow = site.SnowPa is { } pa ? Pressure.FromPascals(pa) : null,
            Wind = site.WindMps is { } mps ? Speed.FromMetresPerSecond(mps) : null,
            HalfAir = Density.FromKilogramsPerCubicMetre(site.HalfAirKgM3),
            // A tunnel that is not even may lack the twin: one side rolls up and the other does not.
            Cases = [.. cases.Select(each => codes.Contains(each.TwinCode) ? each : each with { TwinCode = each.Code })],
            Combinations = Combinations.Of(site, cases),
            Coefficients = site.Coefficients,
            Diagnostics = [.. site.Diagnostics],
        };
    }
}
