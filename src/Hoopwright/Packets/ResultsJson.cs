using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.Packets;

/// <summary>Every computed number as JSON. The same plan gives the same bytes.</summary>
public static class ResultsJson
{
    /// <summary>The results; without a tunnel only rules and diagnostics.</summary>
    /// <param name="planned">What was worked out.</param>
    /// <param name="brief">
    /// True for someone who asks after each keystroke: all on one line, members, takeoff, cuts, covering days and the climate inside
    /// left out, and of each list of parts only the first, of rules those that the plan does not give. Orders and diagnostics are whole.
    /// </param>
    public static byte[] Write(PlannedTunnel planned, bool brief = false)
    {
        using var stream = new MemoryStream();
        using (var json = new ResultWriter(stream, planned.Units, brief)) json.Whole(() => Fields(json, planned, brief));
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Fields(ResultWriter json, PlannedTunnel planned, bool brief)
    {
        json.Text("name", planned.Plan.Name);
        json.Text("units", planned.Units == Quantities.UnitSystem.Metric ? "metric" : "us");
        if (planned.Tunnel is { } tunnel)
        {
            json.Group("site", () => TunnelResults.Site(json, tunnel));
            json.Group("frame", () => TunnelResults.Frame(json, tunnel));
            json.Group("ground", () => TunnelResults.Ground(json, tunnel));
            json.Group("ends", () => TunnelResults.Ends(json, tunnel));
            json.Group("sides", () => TunnelResults.Sides(json, tunnel));
            if (!brief) TunnelResults.Members(json, tunnel);
        }
        if (planned.Strength is { } strength) json.Group("strength", () => StrengthResults.Strength(json, strength));
        if (planned is { Cover: { } cover, Film: { } film }) json.Group("cover", () => OrderResults.Cover(json, cover, brief ? null : planned.Fastening, film, brief));
        if (!brief && planned.Takeoff is { } takeoff) OrderResults.Takeoff(json, takeoff);
        json.WithWholeLists();
        if (planned.Orders is { } orders && Haul.Of(planned) is { } haul) json.Group("orders", () => OrderResults.Orders(json, orders, haul));
        if (!brief && planned.Cuts is { } cuts) OrderResults.Cuts(json, cuts);
        if (!brief && planned is { Steps: { } steps, RecoverSteps: { } recover }) json.Group("steps", () => StepResults.Steps(json, steps, recover));
        if (!brief && planned is { CoverDay: { } day, Inside: { } inside })
        {
            json.Group("days", () => ClimateResults.Days(json, day));
            json.Group("inside", () => ClimateResults.Inside(json, inside));
        }
        if (!brief && planned is { AsBuilt: { } built, Checks: { } checks }) json.Group("siteBook", () => SiteBookResults.SiteBook(json, planned, built, checks));
        if (!brief && planned.Upkeep is { } upkeep) json.Group("upkeep", () => UpkeepResults.Upkeep(json, upkeep));
        json.List("rules", brief ? planned.Rules.Where(rule => !rule.Given) : planned.Rules, rule => Rule(json, rule));
        json.List("assumptions", planned.Assumptions, each => Found(json, each));
        json.List("diagnostics", planned.Diagnostics.Where(each => each.Severity != Severity.Assumption), each => Found(json, each));
    }

    internal static void Rule(ResultWriter json, RuleUsed rule)
    {
        json.Text("path", rule.Path);
        json.Text("value", rule.Text);
        json.Text("says", rule.Says);
        json.Flag("given", rule.Given);
        json.Flag("assumption", rule.IsAssumption);
        json.Text("source", rule.From.ToString());
    }

    internal static void Found(ResultWriter json, Diagnostic found)
    {
        json.Text("severity", TunnelResults.Word(found.Severity));
        json.Text("code", found.Code);
        json.Text("path", found.Path);
        json.Text("message", found.Message);
        json.Text("seen", found.Seen);
        json.Text("accepted", found.Accepted);
    }
}
