using System.Globalization;
using System.Text;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Kept;

/// <summary>
/// Every load of some tunnels, and every check with the values on its way, as they were when somebody last looked. They say
/// nothing of being right, which other tests hold against published tables; they say that nothing changed unseen. Numbers are
/// kept to six digits, so that the last ones, in which machines differ, play no part. HOOPWRIGHT_ACCEPT=1 writes them anew.
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
        StringBuilder text = new();
        Line(text, $"{loads.Standard}, {loads.RiskCategory}, snow {Number(loads.GroundSnow?.Pascals)} Pa, wind {Number(loads.Wind?.MetresPerSecond)} m/s, half air {Number(loads.HalfAir.KilogramsPerCubicMetre)} kg/m3");
        Values(text, loads.Coefficients);
        foreach (var diagnostic in loads.Diagnostics) Line(text, $"  says {diagnostic.Code}");
        foreach (LoadCase load in loads.Cases)
        {
            Line(text, $"{load.Code}: {load.Words}; {load.Kind}, {load.Scale}, at the site {Number(load.SiteReference?.Pascals)} Pa, twin {load.TwinCode}, {load.Enclosure}"
                + (load.SelfWeight ? ", own weight" : "") + (load.Counts ? "" : ", does not count") + (load.IsShut ? "" : ", open"));
            foreach (SurfaceLoad surface in load.Surfaces)
            {
                Profile(text, "square", surface.Normal);
                Profile(text, "down over the plan", surface.PlanGravity);
                Profile(text, "down over the film", surface.SurfaceGravity);
                Profile(text, "sideways", surface.Sideways);
                if (!surface.ByLength.IsEmpty) Line(text, "  along " + string.Join(" ", surface.ByLength.Select(point => $"{Number(point.Along.Metres)}:{Number(point.Factor.Value)}")));
            }
            foreach (LineLoad line in load.Lines) Line(text, $"  on {string.Join(" ", line.MemberIds)}: {line.Axis} {Number(line.Amount.NewtonsPerMetre)} N/m per {line.Per}");
            foreach (PointLoad point in load.Points)
                Line(text, $"  at {point.MemberId} {Number(point.At.X.Metres)} {Number(point.At.Y.Metres)} {Number(point.At.Z.Metres)}: {point.Axis} {Number(point.Amount.Newtons)} N");
            foreach (EndPressure end in load.Ends) Line(text, $"  on the {(end.IsFront ? "front" : "back")} {Number(end.Inwards.Pascals)}");
            if (load.FilmPull is { } pull) Line(text, $"  film bulges to {Number(pull.BulgeRadius.Metres)} m, pulls {Number(pull.Steady.NewtonsPerMetre)} N/m");
            if (load.Temperature is { } change) Line(text, $"  from {Number(change.From.Kelvins)} K to {Number(change.To.Kelvins)} K");
            Values(text, load.Coefficients);
        }
        foreach (LoadCombination combination in loads.Combinations)
            Line(text, $"{combination.Code}{(combination.IsStrengthLevel ? "" : " allowable")}: {string.Join(" + ", combination.Terms.Select(term => $"{Number(term.Factor.Value)} {term.CaseCode}"))}");
        return text.ToString();
    }

    private static string Written(StrengthReport report)
    {
        StringBuilder text = new();
        Line(text, $"{report.Verdict}; {report.Steel}; {report.Feet}; yield {Number(report.Yield?.Least.Pascals)} {Number(report.Yield?.Taken.Pascals)} {Number(report.Yield?.Most.Pascals)} Pa");
        foreach (var diagnostic in report.Diagnostics) Line(text, $"says {diagnostic.Code}");
        foreach (StrengthLimit limit in report.Limits)
        {
            Line(text, $"{limit.Level} {limit.CaseCode}: snow {Number(limit.GroundSnow?.Least.Pascals)} {Number(limit.GroundSnow?.Taken.Pascals)} {Number(limit.GroundSnow?.Most.Pascals)} Pa, roof {Number(limit.RoofSnow?.Pascals)} Pa, "
                + $"wind {Number(limit.Wind?.Least.MetresPerSecond)} {Number(limit.Wind?.Taken.MetresPerSecond)} {Number(limit.Wind?.Most.MetresPerSecond)} m/s, bow {limit.Bow}: {limit.Governs}");
        }
        foreach (CombinationStrength worst in report.Combinations.Take(3)) Line(text, $"{worst.Code}: {Number(worst.Utilisation?.Value)} on bow {worst.Bow}, buckling {Number(worst.BucklingFactor?.Value)}: {worst.Governs}");
        foreach (FootLoads foot in report.FootLoads)
            Line(text, $"feet{(foot.OnEnds ? " at the ends" : "")}: pull {Number(foot.Pull?.Size.Newtons)}, press {Number(foot.Press?.Size.Newtons)}, across {Number(foot.Across?.Size.Newtons)} N, turning {Number(foot.Turning?.Size.NewtonMetres)} Nm");
        foreach (PartStrength part in report.Parts)
        {
            Line(text, $"{part.Kind} {part.Code} ({part.Words}; {part.Where}): {Number(part.AtWeakest?.Value)} to {Number(part.AtStrongest?.Value)} under {part.LoadCode}: {part.Governs}");
            foreach (ICheck check in part.Checks)
                Line(text, $"  {Number(check.Utilisation)} {check.Governs}: {string.Join(", ", check.Worked.Select(value => $"{value.Symbol} {Number(value.Value)} {value.Unit}"))}");
        }
        return text.ToString();
    }

    private static void Profile(StringBuilder text, string what, LoadProfile profile)
    {
        if (profile.IsNone) return;
        Line(text, $"  {what} {string.Join(" ", profile.Points.Select(point => $"{Number(point.Distance.Metres)}:{Number(point.Value.Pascals)}"))}");
    }

    private static void Values(StringBuilder text, IReadOnlyCollection<Coefficient> values)
    {
        if (values.Count > 0) Line(text, $"  by {string.Join(", ", values.Select(value => $"{value.Formula.Symbol} {Number(value.Value.Value)}"))}");
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');

    // What is as good as nothing is nothing: the rest of a difference is another one on each machine.
    private static string Number(double? value) => value is not { } number ? "-" : Math.Abs(number) < 1e-9 ? "0" : number.ToString("G6", CultureInfo.InvariantCulture);
}
