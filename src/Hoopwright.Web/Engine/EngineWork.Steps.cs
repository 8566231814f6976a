using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BeforeCuts;
using Hoopwright.BuildSteps;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Web.Engine;

/// <content>The build as steps.</content>
public static partial class EngineWork
{
    /// <summary>The steps of a job, each as its card says it, with what the site book says of it.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="job">build, or recover for new film on a tunnel that stands.</param>
    /// <param name="language">The language of the crew.</param>
    /// <returns>
    /// JSON: work; done (how many); steps [id, title, purpose, after, people, work, weather, oneGo, checks (what to measure before it, or why to stop), cautions [id, text], parts [title, does], good, hold, tools, uses, drawings, overnight, done, doneOn,
    /// signed, signedBy, ready, notes [text, by, picture]]; empty when the plan has errors.
    /// </returns>
    public static string Steps(string document, string job, string language)
    {
        PlannedTunnel planned = Supplied(document);
        if (planned is not { Tunnel: { } tunnel, Steps: { } build, RecoverSteps: { } recover }) return "";
        BuildPlan plan = job == "recover" ? recover : build;
        CrewWords words = CrewWords.Of(language);
        StepSheet sheet = new(planned, tunnel, plan, words);
        ImmutableDictionary<string, StepMark> marks = StepMarks.Of(planned.Plan);
        return Json(json =>
        {
            json.WriteString("work", sheet.Work(plan.Work));
            json.WriteNumber("done", plan.Steps.Count(step => MarkOf(step.Id).IsDone));
            List(json, "steps", plan.Steps, step =>
            {
                StepMark mark = MarkOf(step.Id);
                json.WriteString("id", step.Id);
                json.WriteString("title", sheet.Said(step.Title));
                json.WriteString("purpose", sheet.Said(step.Purpose));
                Texts(json, "after", step.After.Select(sheet.Wait));
                json.WriteString("people", StepSheet.People(step));
                json.WriteString("work", sheet.Work(step.Work));
                json.WriteString("weather", string.Join(", ", sheet.Weather(step)));
                json.WriteBoolean("oneGo", step.InOneGo);
                Texts(json, "checks", Held(step).Select(check => words.Say(check.Says)));
                List(json, "cautions", step.Cautions, caution =>
                {
                    json.WriteString("id", words.Say(caution.Id));
                    json.WriteString("text", words.Fill(caution.Text));
                });
                List(json, "parts", step.Parts, part =>
                {
                    json.WriteString("title", part.Title is { } title ? sheet.Said(title) : "");
                    Texts(json, "does", part.Does.Select(sheet.Said));
                });
                Texts(json, "good", step.Good.Select(sheet.Said));
                json.WriteString("hold", step.Hold is { } hold ? sheet.Said(hold) : "");
                json.WriteString("tools", sheet.Tools(step));
                json.WriteString("uses", sheet.Uses(step));
                Texts(json, "drawings", step.Drawings);
                json.WriteString("overnight", sheet.Said(step.Overnight));
                json.WriteBoolean("done", mark.IsDone);
                json.WriteString("doneOn", mark.Day?.ToString(StepMarks.DayForm, CultureInfo.InvariantCulture) ?? "");
                json.WriteBoolean("signed", mark.Signed is not null);
                json.WriteString("signedBy", mark.Signed?.By ?? "");
                json.WriteBoolean("ready", !mark.IsDone && step.After.All(wait => MarkOf(wait.StepId).LetsOn(plan.Steps.First(each => each.Id == wait.StepId))));
                List(json, "notes", mark.Notes, note =>
                {
                    json.WriteString("text", note.Note ?? note.Value ?? "");
                    json.WriteString("by", note.By ?? "");
                    json.WriteString("picture", note.Kind == SiteBookKind.Photo ? note.Value ?? "" : "");
                });
            });
        });

        IEnumerable<CutCheck> Held(BuildStep step) => step.Checks.Select(kind => planned.Checks?.Of(kind)).OfType<CutCheck>().Where(check => check.Verdict != CutVerdict.Go);

        StepMark MarkOf(string id) => marks.GetValueOrDefault(id, StepMark.None);
    }
}
