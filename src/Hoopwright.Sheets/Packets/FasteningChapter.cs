using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.CoverSteps;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>The pages on how the film is put on, in the language of whoever reads them.</summary>
internal static class FasteningChapter
{
    /// <summary>Sets the steps. A caution stands in full at the first step that bears it, and is named at the others.</summary>
    public static void Set(PacketBook book, PlannedTunnel planned, Tunnel tunnel, PacketTables tables, CrewWords words)
    {
        FasteningPlan plan = planned.Fastening ?? throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        var make = new PacketTableMaker(planned, tunnel, words);
        book.Chapter(words.Say("Putting the film on"), "covering");
        foreach (Table table in tables.Covering) book.Table(table);
        if (plan.WithFewer is { } fewer) book.Paragraph(make.Phrased(fewer));
        int number = 0;
        foreach (FasteningStep step in plan.Steps)
        {
            number++;
            book.Heading(string.Create(CultureInfo.InvariantCulture, $"{number}. {make.Phrased(step.Title)}"));
            foreach (StepCaution caution in step.Cautions.Where(caution => plan.TellsFirst(caution, step))) book.Caution($"{words.Say("Caution")}: {words.Say(caution.Id)}", words.Fill(caution.Text));
            ImmutableArray<string> again = [.. step.Cautions.Where(caution => !plan.TellsFirst(caution, step)).Select(caution => words.Say(caution.Id))];
            book.Points(
            [
                .. step.Does.Select(make.Phrased),
                .. step.Good.Select(good => words.Fill("Good when: {0}", make.Phrased(good))),
                words.Fill("People at once: {0}.", step.People.ToString(CultureInfo.InvariantCulture)) + (step.Materials.IsEmpty ? "" : " " + words.Fill("Uses: {0}.", make.Uses(step.Materials))),
                .. again.IsEmpty ? (ImmutableArray<string>)[] : [words.Fill("Mind again: {0}.", string.Join(", ", again))],
            ]);
        }
    }
}
