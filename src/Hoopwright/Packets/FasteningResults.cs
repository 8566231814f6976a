using Hoopwright.CoverSteps;

namespace Hoopwright.Packets;

/// <summary>Writes how the film is put on, step by step.</summary>
internal static class FasteningResults
{
    public static void Fastening(ResultWriter json, FasteningPlan plan)
    {
        json.Text("variant", TunnelResults.Word(plan.Variant));
        json.Group("day", () => ClimateResults.Needs(json, plan.Day));
        json.Group("rollSide", () =>
        {
            json.Text("side", plan.RollSide.Name);
            json.Text("why", plan.RollSide.Why.ToString());
            json.Text("source", plan.RollSide.Source.ToString());
        });
        json.Mass("roofFilm", plan.RoofFilm);
        json.Count("people", plan.People);
        json.Text("withFewer", plan.WithFewer?.ToString());
        json.List("crewRules", plan.CrewRules, rule =>
        {
            json.Text("id", rule.Id);
            json.Text("says", rule.Says.ToString());
            json.Count("people", rule.People);
            json.Text("source", rule.Source.ToString());
        });
        json.List("inWind", plan.InWind, each =>
        {
            json.Speed("wind", each.Wind);
            json.Force("pull", each.Pull);
            json.Count("people", each.People);
            json.Flag("fit", each.IsFit);
        });
        json.List("stands", plan.Stands, stand =>
        {
            json.Text("id", stand.Id);
            json.Text("does", stand.Does.ToString());
            json.Length("along", stand.Along);
            json.Text("side", stand.IsLeft ? "left" : "right");
            json.Count("rope", stand.RopeNumber);
        });
        json.List("cautions", StepCaution.All(json.Units), caution =>
        {
            json.Text("id", caution.Id);
            json.Text("text", caution.Text);
            json.Text("source", caution.Source.ToString());
        });
        json.List("steps", plan.Steps, step =>
        {
            json.Text("id", step.Id);
            json.Text("part", TunnelResults.Word(step.Part));
            json.Text("title", step.Title.ToString());
            json.Names("does", step.Does.Select(phrase => phrase.ToString()));
            json.Names("good", step.Good.Select(phrase => phrase.ToString()));
            json.Count("people", step.People);
            json.Names("cautions", step.Cautions.Select(caution => caution.Id));
            json.Names("runs", step.RunIds);
            json.Names("pieces", step.PieceIds);
            json.List("materials", step.Materials, line => StepResults.Material(json, line));
            json.Text("source", step.Source.ToString());
        });
    }
}
