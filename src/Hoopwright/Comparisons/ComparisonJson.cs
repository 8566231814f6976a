using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Strength;

namespace Hoopwright.Comparisons;

/// <summary>A comparison as JSON: the same names for both plans, SI values with the unit in the name, texts as the tape shows them. The same plans give the same bytes.</summary>
public static class ComparisonJson
{
    /// <summary>The comparison.</summary>
    public static byte[] Write(Comparison comparison)
    {
        using var stream = new MemoryStream();
        using (var json = new ResultWriter(stream, comparison.After.Units)) json.Whole(() => Fields(json, comparison));
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Fields(ResultWriter json, Comparison comparison)
    {
        json.Text("caution", StrengthCaution.Text);
        json.List("fields", comparison.Fields, field =>
        {
            json.Text("path", field.Path);
            json.Text("before", field.Before);
            json.Text("after", field.After);
            json.Text("takenBefore", field.TakenBefore);
            json.Text("takenAfter", field.TakenAfter);
        });
        Facts(json, "before", comparison.Before.Plan.Name, comparison.FactsBefore);
        Facts(json, "after", comparison.After.Plan.Name, comparison.FactsAfter);
        json.Group("cost", () =>
        {
            json.Price("change", comparison is { SameCurrency: true, FactsBefore: { } before, FactsAfter: { } after } ? after.Total - before.Total : null);
            json.List("stages", comparison.Stages, stage =>
            {
                json.Text("stage", stage.Stage is { } named ? TunnelResults.Word(named) : "none");
                json.Price("before", stage.Before);
                json.Price("after", stage.After);
            });
        });
        OrderResults.Compared(json, comparison.Orders);
        json.List("diagnostics", comparison.Diagnostics, each =>
        {
            json.Text("change", each.Before is null ? "appears" : each.After is null ? "vanishes" : "changes");
            json.Text("code", each.Told.Code);
            json.Text("path", each.Told.Path);
            if (each.Before is { } before) json.Group("before", () => Told(json, before));
            if (each.After is { } after) json.Group("after", () => Told(json, after));
        });
    }

    private static void Facts(ResultWriter json, string name, string? plan, TunnelFacts? facts) => json.Group(name, () =>
    {
        json.Text("name", plan);
        json.Flag("workedOut", facts is not null);
        if (facts is null) return;
        json.Count("bows", facts.Bows);
        json.Length("bay", facts.Bay);
        json.Text("bowTube", facts.BowTube);
        json.Length("bowTubeLength", facts.BowTubeLength);
        json.Length("peak", facts.Peak);
        json.Count("ties", facts.Ties);
        json.Count("purlins", facts.Purlins);
        json.Count("braces", facts.Braces);
        json.Count("groundPosts", facts.GroundPosts);
        json.Count("holes", facts.Holes);
        json.Volume("concrete", facts.Concrete);
        json.Count("filmPieces", facts.FilmPieces);
        json.List("filmRolls", facts.FilmRolls, roll =>
        {
            json.Length("width", roll.Width);
            json.Length("length", roll.Length);
            json.Flag("onHand", roll.OnHand);
        });
        json.Area("filmBought", facts.FilmBought);
        json.Count("cutBars", facts.CutBars);
        json.Count("cutPieces", facts.CutPieces);
        json.Price("total", facts.Total);
        json.Text("currency", facts.Currency);
        json.Count("unpricedLines", facts.Unpriced);
        if (facts.Strength is { } strength) json.Group("strength", () => StrengthResults.InShort(json, strength));
    });

    private static void Told(ResultWriter json, Diagnostic told)
    {
        json.Text("severity", TunnelResults.Word(told.Severity));
        json.Text("message", told.Message);
        json.Text("seen", told.Seen);
        json.Text("accepted", told.Accepted);
    }
}
