using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;
using static Hoopwright.Testing.KeptText;

namespace Hoopwright.Tests.Strength.Kept;

/// <summary>
/// Every load of some tunnels, and every check with the values on its way, as they were when somebody last looked.
/// HOOPWRIGHT_ACCEPT=1 writes them anew.
/// </summary>
public sealed class KeptResultTests
{
    public static TheoryData<string> Names => [.. KeptTunnels.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Loads_are_what_they_were(string name)
    {
        Tunnel tunnel = KeptTunnels.Of(name);
        Golden.Match(Written(LoadPlanner.Plan(tunnel, new Answers(tunnel.Units))), $"Hoopwright.Tests/Strength/Kept/Loads/{name}.txt");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Checks_are_what_they_were(string name)
    {
        Tunnel tunnel = KeptTunnels.Of(name);
        Golden.Match(Written(StrengthPlanner.Plan(tunnel, new Answers(tunnel.Units))), $"Hoopwright.Tests/Strength/Kept/Checks/{name}.txt");
    }

    private static string Written(TunnelLoads loads)
    {
        KeptText text = new();
        text.Line($"{loads.Standard}, {loads.RiskCategory}, snow {Number(loads.GroundSnow?.Pascals)} Pa, wind {Number(loads.Wind?.MetresPerSecond)} m/s, half air {Number(loads.HalfAir.KilogramsPerCubicMetre)} kg/m3");
        Values(text, loads.Coefficients);
        foreach (var diagnostic in loads.Diagnostics) text.Line($"  says {diagnostic.Code}");
        foreach (LoadCase load in loads.Cases)
        {
            text.Line($"{load.Code}: {load.Words}; {load.Kind}, {load.Scale}, at the site {Number(load.SiteReference?.Pascals)} Pa, twin {load.TwinCode}, {load.Enclosure}"
                + (load.SelfWeight ? ", own weight" : "") + (load.Counts ? "" : ", does not count") + (load.IsShut ? "" : ", open"));
            foreach (SurfaceLoad surface in load.Surfaces)
            {
                Profile(text, "square", surface.Normal);
                Profile(text, "down over the plan", surface.PlanGravity);
                Profile(text, "down over the film", surface.SurfaceGravity);
                Profile(text, "sideways", surface.Sideways);
                if (!surface.ByLength.IsEmpty) text.Line("  along " + string.Join(" ", surface.ByLength.Select(point => $"{Number(point.Along.Metres)}:{Number(point.Factor.Value)}")));
            }
            foreach (LineLoad line in load.Lines) text.Line($"  on {string.Join(" ", line.MemberIds)}: {line.Axis} {Number(line.Amount.NewtonsPerMetre)} N/m per {line.Per}");
            foreach (PointLoad point in load.Points)
                text.Line($"  at {point.MemberId} {Number(point.At.X.Metres)} {Number(point.At.Y.Metres)} {Number(point.At.Z.Metres)}: {point.Axis} {Number(point.Amount.Newtons)} N");
            foreach (EndPressure end in load.Ends) text.Line($"  on the {(end.IsFront ? "front" : "back")} {Number(end.Inwards.Pascals)}");
            if (load.FilmPull is { } pull) text.Line($"  film bulges to {Number(pull.BulgeRadius.Metres)} m, pulls {Number(pull.Steady.NewtonsPerMetre)} N/m");
            if (load.Temperature is { } change) text.Line($"  from {Number(change.From.Kelvins)} K to {Number(change.To.Kelvins)} K");
            Values(text, load.Coefficients);
        }
        foreach (LoadCombination combination in loads.Combinations)
            text.Line($"{combination.Code}{(combination.IsStrengthLevel ? "" : " allowable")}: {string.Join(" + ", combination.Terms.Select(term => $"{Number(term.Factor.Value)} {term.CaseCode}"))}");
        return text.ToString();
    }

    private static string Written(StrengthReport report)
    {
        KeptText text = new();
        text.Line($"{report.Verdict}; {report.Steel}; {report.Feet}; yield {Number(report.Yield?.Least.Pascals)} {Number(report.Yield?.Taken.Pascals)} {Number(report.Yield?.Most.Pascals)} Pa");
        foreach (var diagnostic in report.Diagnostics) text.Line($"says {diagnostic.Code}");
        foreach (StrengthLimit limit in report.Limits)
        {
            text.Line($"{limit.Level} {limit.CaseCode}: snow {Number(limit.GroundSnow?.Least.Pascals)} {Number(limit.GroundSnow?.Taken.Pascals)} {Number(limit.GroundSnow?.Most.Pascals)} Pa, roof {Number(limit.RoofSnow?.Pascals)} Pa, "
                + $"wind {Number(limit.Wind?.Least.MetresPerSecond)} {Number(limit.Wind?.Taken.MetresPerSecond)} {Number(limit.Wind?.Most.MetresPerSecond)} m/s, bow {limit.Bow}: {limit.Governs}");
        }
        foreach (CombinationStrength worst in report.Combinations.Take(3)) text.Line($"{worst.Code}: {Number(worst.Utilisation?.Value)} on bow {worst.Bow}, buckling {Number(worst.BucklingFactor?.Value)}: {worst.Governs}");
        foreach (FootLoads foot in report.FootLoads)
            text.Line($"feet{(foot.OnEnds ? " at the ends" : "")}: pull {Number(foot.Pull?.Size.Newtons)}, press {Number(foot.Press?.Size.Newtons)}, across {Number(foot.Across?.Size.Newtons)} N, turning {Number(foot.Turning?.Size.NewtonMetres)} Nm");
        foreach (PartStrength part in report.Parts)
        {
            text.Line($"{part.Kind} {part.Code} ({part.Words}; {part.Where}): {Number(part.AtWeakest?.Value)} to {Number(part.AtStrongest?.Value)} under {part.LoadCode}: {part.Governs}");
            foreach (ICheck check in part.Checks)
                text.Line($"  {Number(check.Utilisation)} {check.Governs}: {string.Join(", ", check.Worked.Select(value => $"{value.Symbol} {Number(value.Value)} {value.Unit}"))}");
        }
        return text.ToString();
    }

    private static void Profile(KeptText text, string what, LoadProfile profile)
    {
        if (profile.IsNone) return;
        text.Line($"  {what} {string.Join(" ", profile.Points.Select(point => $"{Number(point.Distance.Metres)}:{Number(point.Value.Pascals)}"))}");
    }

    private static void Values(KeptText text, IReadOnlyCollection<Coefficient> values)
    {
        if (values.Count > 0) text.Line($"  by {string.Join(", ", values.Select(value => $"{value.Formula.Symbol} {Number(value.Value.Value)}"))}");
    }
}
