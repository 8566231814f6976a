using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.Cuts.Progress;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Makes the cut lists of boards, posts, tubes and channel.</summary>
public static class CutPlanner
{
    /// <summary>
    /// One least-cost cut list for each item and size, stock on hand first. Never throws for a takeoff: pieces that no stock
    /// serves are listed to be ordered to length.
    /// </summary>
    /// <param name="takeoff">What is to be cut.</param>
    /// <param name="plan">The plan: saw, stock on hand, prices.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    /// <param name="effort">How much work may be spent on each cutting job.</param>
    /// <param name="memory">Jobs worked out before; null for none.</param>
    public static CutSheets Plan(TakeoffList takeoff, Plan plan, Answers answers, CutEffort effort, CutMemory? memory = null)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        var saw = new SawRules(
            answers.Take("cuts.kerf", CutDefaults.Kerf, plan.Cuts.Kerf),
            answers.Take("cuts.endTrim", CutDefaults.EndTrim, plan.Cuts.EndTrim),
            answers.Take("cuts.usefulLeftover", CutDefaults.UsefulLeftover, plan.Cuts.UsefulLeftover),
            answers.Units);
        PriceBook prices = PriceBook.Of(plan);
        var joints = new TakeoffDraft();
        var sheets = ImmutableArray.CreateBuilder<CutSheet>();
        ImmutableArray<CutRecord> records = CutRecordReader.Read(plan, found);
        // The closest of the tolerances that wood is cut to; the length of the tunnel only decides how square it must be.
        var near = AsBuiltTolerances.Of(plan, Length.Zero, new Answers(answers.Units));
        foreach (ImmutableArray<MaterialLine> lines in Groups(takeoff))
        {
            StockOffers offers = StockOffers.Of(lines, takeoff, plan, prices, answers.Units, found);
            // A knife at a mark takes nothing away.
            SawRules cutter = Items.IsSawn(lines[0].Item) ? saw : saw with { Kerf = Length.Zero, Trim = Length.Zero };
            CutSheet sheet = new SheetPlanner(lines, offers, cutter, effort, found, joints, memory).Sheet(LetterOf(sheets.Count));
            ImmutableArray<CutRecord> own = [.. records.Where(record => record.Name == sheet.Name)];
            sheets.Add(own.IsEmpty ? sheet : new CutResumer(sheet, cutter, Length.Min(near.Frame, near.Posts), effort, found).Resume(own));
        }
        found.AddRange(records.Where(record => sheets.All(sheet => sheet.Name != record.Name)).Select(record => new Diagnostic(
            "site-book.cut.item-unknown", Severity.Warning, record.Path + ".of", "There is no cut list of this name.", SeenText.Shorten(record.Name), NearestWord.Accepted(record.Name, [.. sheets.Select(sheet => sheet.Name)]))));
        if (sheets.Any(sheet => sheet.Progress is not null))
            found.Add(new Diagnostic("assumed.cuts.bought", Severity.Assumption, "siteBook", "Of cut lists that were begun, what is not cut yet is taken as bought.", null, "as ordered"));
        return new CutSheets(sheets.ToImmutable(), joints.List().Lines, found.ToImmutable());
    }

    /// <summary>A, B … Z, AA, AB …, as columns are lettered.</summary>
    internal static string LetterOf(int number)
    {
        string letters = "";
        for (int rest = number; rest >= 0; rest = (rest / 26) - 1) letters = (char)('A' + (rest % 26)) + letters;
        return letters;
    }

    private static IEnumerable<ImmutableArray<MaterialLine>> Groups(TakeoffList takeoff) => takeoff.Lines
        .Where(line => line.Unit == MaterialUnit.CutLengths && !line.Pieces.IsEmpty)
        .GroupBy(line => (line.Item, line.Size))
        .OrderBy(group => group.Key.Item, StringComparer.Ordinal).ThenBy(group => group.Key.Size, StringComparer.Ordinal)
        .Select(group => group.ToImmutableArray());
}
