using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Hoopwright.Sweeps;

namespace Hoopwright.Cli.Verbs;

/// <summary>Finds what would make a tunnel stronger, and prints or draws it.</summary>
internal sealed class ChangesRun(Terminal terminal, int? cores)
{
    // Each drawing is a page; the first of the ranking are what people choose from.
    private const int MostDrawings = 6;

    /// <summary>Works the changes out and prints them.</summary>
    /// <param name="plan">The bytes of the plan.</param>
    /// <param name="book">A price book and what is wrong with it.</param>
    /// <param name="most">How many changes are made one after the other at most.</param>
    /// <param name="keep">How many of the ranking are shown.</param>
    /// <param name="form">How they are printed.</param>
    /// <param name="draw">Where drawings go, and their day; null for none.</param>
    public int Run(ReadOnlyMemory<byte> plan, (Prices? Book, ImmutableArray<Diagnostic> Wrong) book, int most, int keep, OutputForm form, (string Folder, DateOnly Day)? draw)
    {
        (ChangeStudy? study, ImmutableArray<Diagnostic> wrong) = ChangeStudy.Read(plan, book.Book);
        if (study is null || !book.Wrong.IsEmpty)
        {
            DiagnosticPrinter.Print(terminal.Messages, terminal, [.. book.Wrong, .. wrong], reading: null);
            return ExitCode.InputErrors;
        }
        ImmutableArray<ChangedDesign> ranked = Ranked(study, "changes");
        ImmutableArray<ChangedDesign> shown = [.. ranked.Take(keep)];
        (ImmutableArray<ChangedDesign> steps, ChangeStudy last) = study.Verdict is StrengthVerdict.DoesNotStand or StrengthVerdict.Marginal ? Steps(study, ranked, most) : ([], study);
        if (terminal.Interactive) terminal.Messages.WriteLine();
        switch (form)
        {
            case OutputForm.Json: terminal.Out.Write(Encoding.UTF8.GetString(ChangeText.Json(study, shown, steps))); break;
            case OutputForm.Csv: terminal.Out.Write(ChangeText.Csv(study, shown, steps)); break;
            case OutputForm.Text: Print(study, shown, steps); break;
        }
        if (draw is { } to) Draw(study, ranked, steps, last, to.Folder, to.Day);
        return ExitCode.Done;
    }

    private ImmutableArray<ChangedDesign> Ranked(ChangeStudy study, string what)
    {
        var worked = new ChangedDesign[study.Changes.Length];
        int done = 0;
        Parallel.For(0, worked.Length, new ParallelOptions { MaxDegreeOfParallelism = cores ?? Environment.ProcessorCount, CancellationToken = terminal.Stop }, number =>
        {
            worked[number] = study.Work(number);
            int count = Interlocked.Increment(ref done);
            if (terminal.Interactive) terminal.Messages.Write(string.Create(CultureInfo.InvariantCulture, $"\r{what}: {count} of {worked.Length}   "));
        });
        return ChangeRank.Order(worked, study.Verdict);
    }

    /// <summary>The best change, then the best on top of it, until the tunnel stands or nothing helps.</summary>
    private (ImmutableArray<ChangedDesign> Steps, ChangeStudy Last) Steps(ChangeStudy study, ImmutableArray<ChangedDesign> ranked, int most)
    {
        var steps = ImmutableArray.CreateBuilder<ChangedDesign>();
        while (steps.Count < most && ranked is [{ Helps: true } best, ..] && study.After(best.Design.Number) is { } next)
        {
            steps.Add(best);
            study = next;
            if (study.Verdict == StrengthVerdict.Stands || steps.Count == most) break;
            ranked = Ranked(study, string.Create(CultureInfo.InvariantCulture, $"step {steps.Count + 1}"));
        }
        return (steps.ToImmutable(), study);
    }

    private void Print(ChangeStudy study, ImmutableArray<ChangedDesign> ranked, ImmutableArray<ChangedDesign> steps)
    {
        terminal.Out.WriteLine("Single changes, each against the plan as it is");
        TextTable.Print(terminal.Out, ChangeText.Heads(study), [ChangeText.AsItIs(study), .. ranked.Select(change => ChangeText.Cells(study, change))]);
        if (!steps.IsEmpty)
        {
            terminal.Out.WriteLine();
            terminal.Out.WriteLine("One after the other, each against the one before");
            TextTable.Print(terminal.Out, ChangeText.Heads(study), [.. steps.Select(change => ChangeText.Cells(study, change))]);
            terminal.Out.WriteLine(ChangeText.Together(study, steps));
        }
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(StrengthCaution.Text);
    }

    private void Draw(ChangeStudy study, ImmutableArray<ChangedDesign> ranked, ImmutableArray<ChangedDesign> steps, ChangeStudy last, string folder, DateOnly day)
    {
        ImmutableArray<ChangedDesign> drawn = [.. ranked.Where(change => change.Helps).Take(MostDrawings)];
        int sheets = drawn.Length + (steps.Length > 1 ? 1 : 0);
        for (int index = 0; index < drawn.Length; index++)
            Sheet(drawn[index].Change.Code, index, study.Planned(drawn[index].Design.Number), drawn[index].Change.Words);
        if (steps.Length > 1) Sheet("all-steps", drawn.Length, last.Before, string.Join("; ", steps.Select(step => step.Change.Words)));

        void Sheet(string name, int index, Packets.PlannedTunnel after, string words) => BeforeAfterFile.Write(
            terminal, Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{index + 1:00}-{name}.svg")), study.Before, after, words, day, string.Create(CultureInfo.InvariantCulture, $"{index + 1} of {sheets}"));
    }
}
