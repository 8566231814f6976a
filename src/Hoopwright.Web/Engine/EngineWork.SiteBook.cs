using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.Comparisons;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Web.Engine;

/// <content>What was measured, against the plan.</content>
public static partial class EngineWork
{
    /// <summary>What can be measured, what was, and whether to cut.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="language">The language of the crew.</param>
    /// <returns>
    /// JSON: checks [id, kind, verdict (go, measureFirst, stop), says, decided, missing [name, what], changed [place, planned, now, shortBy]];
    /// things [name, kind, what, how, planned, plannedM, tolerance, toleranceM, wanted, measured, off, out, doubt, spread, putRight, orElse, readings [id, text, by, standing]];
    /// worth (orders that are bought otherwise and the order in all, none while nothing was measured) [what, before, after, change];
    /// square (null while it is not known) [isSquare, corners [name, says], differ]; empty when the plan has errors.
    /// </returns>
    public static string SiteBook(string document, string language)
    {
        PlannedTunnel planned = Supplied(document);
        if (planned is not { Tunnel: { } tunnel, Checks: { } checks }) return "";
        CrewWords words = CrewWords.Of(language);
        ImmutableArray<Measurable> all = planned.AsBuilt?.Measurements.Measurable ?? Measurables.Of(tunnel, AsBuiltTolerances.Of(planned.Plan, tunnel.Length, new Answers(planned.Units)));
        HashSet<string> wanted = [.. checks.All.SelectMany(check => check.Missing).Select(need => need.Of.Name)];
        ImmutableDictionary<string, Deviation> measured = (planned.AsBuilt?.Deviations ?? []).ToImmutableDictionary(each => each.Measurement.Of.Name, StringComparer.Ordinal);
        return Json(json =>
        {
            List(json, "checks", checks.All, check => WriteCheck(json, check));
            List(json, "things", all, thing => WriteThing(json, thing, measured.GetValueOrDefault(thing.Name)));
            List(json, "worth", planned.ByPlan is { } byPlan ? ComparisonTexts.Paid(Comparison.Of(byPlan, planned)) : [], row =>
            {
                json.WriteString("what", words.Say(row.What));
                json.WriteString("before", row.Before);
                json.WriteString("after", row.After);
                json.WriteString("change", row.Change);
            });
            json.WritePropertyName("square");
            if (planned.AsBuilt?.Squaring is { } square) WriteSquare(json, square);
            else json.WriteNullValue();
        });

        string Tape(Length length) => TapeText.Of(length, planned.Units);

        void WriteCheck(Utf8JsonWriter json, CutCheck check)
        {
            json.WriteString("id", check.Id);
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(check.Kind.ToString()));
            json.WriteString("verdict", JsonNamingPolicy.CamelCase.ConvertName(check.Verdict.ToString()));
            json.WriteString("says", words.Say(check.Says));
            json.WriteString("decided", check.Decision is { } decision ? decision.By ?? decision.Id ?? "" : "");
            List(json, "missing", check.Missing, need =>
            {
                json.WriteString("name", need.Of.Name);
                json.WriteString("what", words.Say(need.Of.What));
            });
            List(json, "changed", check.Changed, piece =>
            {
                json.WriteString("place", words.Say(piece.Place));
                json.WriteString("planned", Tape(piece.Planned));
                json.WriteString("now", Tape(piece.Now));
                json.WriteString("shortBy", piece.ShortBy > Length.Zero ? Tape(piece.ShortBy) : "");
            });
        }

        void WriteThing(Utf8JsonWriter json, Measurable thing, Deviation? found)
        {
            json.WriteString("name", thing.Name);
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(thing.Kind.ToString()));
            json.WriteString("what", words.Say(thing.What));
            json.WriteString("how", words.Say(thing.How));
            json.WriteString("planned", Tape(thing.Planned));
            json.WriteNumber("plannedM", thing.Planned.Metres);
            json.WriteString("tolerance", Tape(thing.Tolerance));
            json.WriteNumber("toleranceM", thing.Tolerance.Metres);
            json.WriteBoolean("wanted", wanted.Contains(thing.Name));
            Measurement? measurement = found?.Measurement ?? planned.AsBuilt?.Measurements.Of(thing.Name);
            json.WriteString("measured", measurement?.Value is { } value ? Tape(value) : "");
            json.WriteString("off", measurement?.Off is { } off ? Signed(off) : "");
            json.WriteBoolean("out", measurement is { IsOut: true });
            json.WriteBoolean("doubt", measurement is { IsInDoubt: true });
            json.WriteString("spread", measurement is { Spread: { } spread } && spread > Length.Zero ? Tape(spread) : "");
            json.WriteString("putRight", words.Say(found?.PutRight ?? []));
            json.WriteString("orElse", found?.OrElse is { } orElse ? words.Say(orElse) : "");
            List(json, "readings", measurement?.Readings ?? [], reading =>
            {
                json.WriteString("id", reading.EntryId);
                json.WriteString("text", reading.Value is { } read ? Tape(read) : reading.Text ?? "");
                json.WriteString("by", reading.By ?? "");
                json.WriteString("standing", JsonNamingPolicy.CamelCase.ConvertName(reading.Standing.ToString()));
            });
        }

        void WriteSquare(Utf8JsonWriter json, Squaring square)
        {
            json.WriteStartObject();
            json.WriteBoolean("isSquare", square.IsSquare);
            json.WriteString("differ", Tape(square.DiagonalsDiffer));
            json.WriteString("worst", Tape(square.Worst));
            List(json, "corners", square.Corners.Where(corner => corner.Move.Metres > 5e-4), corner =>
            {
                json.WriteString("name", words.Say(corner.Name));
                json.WriteString("right", Signed(corner.MoveRight));
                json.WriteString("back", Signed(corner.MoveBack));
            });
            json.WriteEndObject();
        }

        // What the tape does not show is neither more nor less.
        string Signed(Length off) => Tape(off.Abs()) is var shown && shown == Tape(Length.Zero) ? shown : off.Metres < 0 ? "−" + shown : "+" + shown;
    }
}
