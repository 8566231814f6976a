using Hoopwright.BeforeCuts;
using Hoopwright.BuildSteps;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Packets;

/// <summary>Writes the steps of the build and of the re-cover.</summary>
internal static class StepResults
{
    public static void Steps(ResultWriter json, BuildPlan build, BuildPlan recover)
    {
        json.Text("skill", TunnelResults.Word(build.Skill));
        Work(json, build.Work);
        json.List("cautions", CoverSteps.StepCaution.All(json.Units).Concat(BuildCautions.All), caution =>
        {
            json.Text("id", caution.Id);
            json.Text("text", caution.Text);
            json.Text("source", caution.Source.ToString());
        });
        json.List("build", build.Steps, step => Step(json, step));
        json.Group("recoverWork", () => Work(json, recover.Work));
        json.List("recover", recover.Steps, step => Step(json, step));
    }

    /// <summary>One line of materials that a step uses.</summary>
    public static void Material(ResultWriter json, MaterialLine line)
    {
        json.Text("line", line.Id);
        json.Text("item", line.Item);
        json.Text("size", line.Size);
        json.Text("unit", TunnelResults.Word(line.Unit));
        json.Number("quantity", decimal.Round(line.Quantity, 6));
    }

    private static void Step(ResultWriter json, BuildStep step)
    {
        json.Text("id", step.Id);
        json.Text("stage", TunnelResults.Word(step.Stage));
        json.Text("title", step.Title.ToString());
        json.Text("purpose", step.Purpose.ToString());
        json.List("after", step.After, wait =>
        {
            json.Text("step", wait.StepId);
            json.Hours("wait", wait.Wait);
            json.Text("why", wait.Why?.ToString());
        });
        Work(json, step.Work);
        json.List("tasks", step.Tasks, task =>
        {
            json.Text("what", task.What.ToString());
            json.Count("count", task.Count);
            json.Hours("leastEach", task.LeastEach);
            json.Hours("mostEach", task.MostEach);
            json.Text("source", task.Source.ToString());
        });
        json.Count("leastPeople", step.LeastPeople);
        json.Count("bestPeople", step.BestPeople);
        json.List("tools", step.Tools, tool =>
        {
            json.Text("name", tool.Name);
            json.Count("count", tool.Count);
        });
        json.List("materials", step.Materials, line => Material(json, line));
        json.Names("cuts", step.Materials.SelectMany(line => line.Pieces).Select(piece => piece.MemberId));
        json.Names("drawings", step.Drawings);
        json.List("parts", step.Parts, part =>
        {
            json.Text("title", part.Title?.ToString());
            json.Names("does", part.Does.Select(phrase => phrase.ToString()));
        });
        json.Names("good", step.Good.Select(phrase => phrase.ToString()));
        json.Text("hold", step.Hold?.ToString());
        json.Names("checks", step.Checks.Select(CutCheck.IdOf));
        json.Names("cautions", step.Cautions.Select(caution => caution.Id));
        json.Group("weather", () =>
        {
            json.Text("wind", step.Weather.Wind is { } wind ? TapeText.Of(wind, json.Units) : null);
            json.Text("gust", step.Weather.Gust is { } gust ? TapeText.Of(gust, json.Units) : null);
            json.Text("coldest", step.Weather.Coldest is { } coldest ? TapeText.Of(coldest, json.Units) : null);
            json.Text("warmest", step.Weather.Warmest is { } warmest ? TapeText.Of(warmest, json.Units) : null);
            json.Flag("dry", step.Weather.Dry);
        });
        json.Flag("inOneGo", step.InOneGo);
        json.Text("overnight", step.Overnight.ToString());
        json.Text("overnightWind", step.OvernightWind is { } stands ? TapeText.Of(stands, json.Units) : null);
        json.Text("source", step.Source.ToString());
    }

    private static void Work(ResultWriter json, WorkSpan work)
    {
        json.Hours("least", work.Least);
        json.Hours("likely", work.Likely);
        json.Hours("most", work.Most);
    }
}
