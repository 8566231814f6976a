using Hoopwright.Strength;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Packets;

/// <summary>Writes what the tunnel stands.</summary>
internal static class StrengthResults
{
    public static void Strength(ResultWriter json, StrengthReport strength)
    {
        json.Text("verdict", TunnelResults.Word(strength.Verdict));
        json.Text("says", strength.Says);
        json.Text("caution", StrengthCaution.Text);
        if (strength.Loads.GroundSnow is { } snow) json.Pressure("groundSnow", snow);
        if (strength.Loads.Wind is { } wind) json.Speed("wind", wind);
        json.Text("steel", strength.Steel);
        if (strength.Yield is { } yield)
        {
            json.Stress("yieldLeast", yield.Least);
            json.Stress("yield", yield.Taken);
            json.Stress("yieldMost", yield.Most);
        }
        json.Text("feet", strength.Feet);
        json.List("limits", strength.Limits, limit => Limit(json, limit));
        json.List("combinations", strength.Combinations, combination => Combination(json, combination));
        json.List("parts", strength.Parts, part => Part(json, part));
        json.List("footLoads", strength.FootLoads, feet => FootLoads(json, feet));
        if (strength.Worst is { } worst) json.Group("worst", () => Diagram(json, worst));
        if (strength.Row is { } row) json.Group("row", () => Row(json, row));
        json.List("loadCases", strength.Loads.Cases, load => Case(json, load));
        json.List("coefficients", strength.Loads.Coefficients, coefficient => Coefficient(json, coefficient));
    }

    /// <summary>Verdict, limits, worst combination and parts, without what they were worked out from.</summary>
    public static void InShort(ResultWriter json, StrengthReport strength)
    {
        json.Text("verdict", TunnelResults.Word(strength.Verdict));
        json.Text("says", strength.Says);
        json.Text("governs", strength.Governs);
        json.List("limits", strength.Limits, limit => Limit(json, limit));
        if (strength.Combinations is [var worst, ..]) json.Group("worstCombination", () => Combination(json, worst));
        json.List("parts", strength.Parts, part => PartInShort(json, part));
        if (strength.Row?.SnowBucklingFactor is { } factor) json.Ratio("snowBucklingFactor", factor);
    }

    private static void Limit(ResultWriter json, StrengthLimit limit)
    {
        json.Text("level", TunnelResults.Word(limit.Level));
        json.Range("groundSnow", limit.GroundSnow);
        if (limit.RoofSnow is { } roof) json.Pressure("roofSnow", roof);
        json.List("depths", limit.Depths, depth =>
        {
            json.Text("snow", depth.Words);
            json.Movement("depth", depth.Depth);
        });
        json.Range("wind", limit.Wind);
        json.Text("loadCase", limit.CaseCode);
        json.Text("words", limit.CaseWords);
        json.Count("bow", limit.Bow);
        json.Movement("across", limit.Across);
        json.Movement("up", limit.Up);
        json.Text("governs", limit.Governs);
    }

    private static void Combination(ResultWriter json, CombinationStrength combination)
    {
        json.Text("code", combination.Code);
        json.Text("words", combination.Words);
        json.Flag("buckles", combination.Utilisation is null);
        if (combination.Utilisation is { } utilisation) json.Ratio("utilisation", utilisation);
        json.Count("bow", combination.Bow);
        json.Movement("across", combination.Across);
        json.Movement("up", combination.Up);
        json.Text("governs", combination.Governs);
        if (combination.BucklingFactor is { } factor) json.Ratio("bucklingFactor", factor);
    }

    private static void Part(ResultWriter json, PartStrength part)
    {
        PartInShort(json, part);
        json.List("worked", part.Checks.SelectMany(check => check.Worked).Where(value => double.IsFinite(value.Value)), value =>
        {
            json.Text("symbol", value.Symbol);
            json.Text("words", value.Says);
            json.Ratio("value", Quantities.Ratio.FromValue(value.Value));
            json.Text("unit", value.Unit);
        });
        json.List("formulas", part.Checks.SelectMany(check => check.Formulas), formula =>
        {
            json.Text("symbol", formula.Symbol);
            json.Text("formula", formula.Text);
            json.Text("unit", formula.Unit);
            json.Text("source", formula.Source.ToString());
        });
    }

    private static void FootLoads(ResultWriter json, FootLoads feet)
    {
        json.Text("bows", feet.OnEnds ? "ends" : "between");
        Peak("pull", feet.Pull);
        Peak("press", feet.Press);
        Peak("across", feet.Across);
        if (feet.Turning is { } turning)
        {
            json.Group("turning", () =>
            {
                json.Moment("moment", turning.Size);
                Where(turning.Bow, turning.IsRight, turning.LoadCode, turning.LoadWords);
            });
        }
        json.Names("buckles", feet.Buckles);

        void Peak(string name, FootForce? peak)
        {
            if (peak is null) return;
            json.Group(name, () =>
            {
                json.Force("force", peak.Size);
                Where(peak.Bow, peak.IsRight, peak.LoadCode, peak.LoadWords);
            });
        }

        void Where(int bow, bool isRight, string code, string words)
        {
            json.Count("bow", bow);
            json.Text("foot", isRight ? "right" : "left");
            json.Text("combination", code);
            json.Text("combinationWords", words);
        }
    }

    private static void PartInShort(ResultWriter json, PartStrength part)
    {
        json.Text("code", part.Code);
        json.Text("kind", TunnelResults.Word(part.Kind));
        json.Text("words", part.Words);
        json.Text("where", part.Where);
        json.Text("verdict", TunnelResults.Word(part.Verdict));
        if (part.AtWeakest is { } weakest) json.Ratio("utilisationAtWeakest", weakest);
        if (part.AtStrongest is { } strongest) json.Ratio("utilisationAtStrongest", strongest);
        json.Text("governs", part.Governs);
        json.Text("combination", part.LoadCode);
        json.Text("combinationWords", part.LoadWords);
    }

    private static void Diagram(ResultWriter json, BowDiagram diagram)
    {
        json.Text("code", diagram.Code);
        json.Text("words", diagram.Words);
        json.Count("bow", diagram.Bow);
        json.Group("leftFoot", () => Foot(json, diagram.LeftFoot));
        json.Group("rightFoot", () => Foot(json, diagram.RightFoot));
        json.List("points", diagram.Points, point =>
        {
            json.Movement("across", point.Place.Across);
            json.Movement("up", point.Place.Up);
            json.Movement("movedAcross", point.MovedAcross);
            json.Movement("movedUp", point.MovedUp);
            json.Force("axial", point.Axial);
            json.Force("shear", point.Shear);
            json.Moment("moment", point.Moment);
            json.Ratio("utilisation", point.Utilisation);
        });
    }

    private static void Row(ResultWriter json, RowStrength row)
    {
        if (row.SnowBucklingFactor is { } factor) json.Ratio("snowBucklingFactor", factor);
        json.List("parts", row.Parts, part =>
        {
            json.Text("kind", part.Kind);
            json.Text("member", part.MemberId);
            json.Text("place", part.Place);
            if (part.Utilisation is { } utilisation) json.Ratio("utilisation", utilisation);
            json.Text("governs", part.Governs);
            json.Text("words", part.Words);
        });
        json.Count("looked", row.Looked);
        json.Names("combinations", row.Combinations);
        json.Names("buckles", row.Buckles);
    }

    private static void Foot(ResultWriter json, FootReaction foot)
    {
        json.Force("across", foot.Across);
        json.Force("up", foot.Up);
        json.Moment("turning", foot.Turning);
    }

    private static void Case(ResultWriter json, LoadCase load)
    {
        json.Text("code", load.Code);
        json.Text("words", load.Words);
        json.Text("kind", TunnelResults.Word(load.Kind));
        json.Flag("counts", load.Counts);
        json.Text("note", load.Note);
        json.List("coefficients", load.Coefficients, coefficient => Coefficient(json, coefficient));
    }

    private static void Coefficient(ResultWriter json, Coefficient coefficient)
    {
        json.Text("symbol", coefficient.Formula.Symbol);
        json.Text("formula", coefficient.Formula.Text);
        json.Text("words", coefficient.Words);
        json.Ratio("value", coefficient.Value);
        json.Text("unit", coefficient.Formula.Unit);
        json.Text("source", coefficient.Formula.Source.ToString());
        json.Flag("confirm", coefficient.NeedsConfirming);
    }
}
