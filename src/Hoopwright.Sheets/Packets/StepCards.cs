using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>One card for each step, to be handed out: half a Letter page, or A5.</summary>
public static class StepCards
{
    /// <summary>The cards as a file, cards.pdf, or cards-es.pdf in Spanish.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4; a card is half of it.</param>
    /// <param name="date">The day on the cards.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    /// <param name="job">Which job.</param>
    public static PacketFile Write(PlannedTunnel planned, Paper paper, DateOnly date, string language, BuildJob job = BuildJob.Build)
    {
        CrewWords words = CrewWords.Of(language);
        PdfDetails details = new(PacketWriter.Name(planned), words.Say("Step cards"), new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), words.Language);
        string name = job switch { BuildJob.Build => "cards", BuildJob.Recover => "cards-recover" };
        return new PacketFile(words.Language == "en" ? name + ".pdf" : $"{name}-{words.Language}.pdf", [.. PdfWriter.Write(Pages(planned, paper, date, language, job), details)]);
    }

    /// <summary>The pages alone.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4; a card is half of it.</param>
    /// <param name="date">The day on the cards.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    /// <param name="job">Which job.</param>
    public static ImmutableArray<PdfSheet> Pages(PlannedTunnel planned, Paper paper, DateOnly date, string language, BuildJob job = BuildJob.Build)
    {
        Tunnel tunnel = PacketWriter.Built(planned);
        ArgumentNullException.ThrowIfNull(paper);
        CrewWords words = CrewWords.Of(language);
        BuildPlan plan = (job == BuildJob.Build ? planned.Steps : planned.RecoverSteps) ?? throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        var make = new PacketTableMaker(planned, tunnel, words);
        var book = new PacketBook(paper.Half, $"{PacketWriter.Name(planned)}, {PacketWriter.Written(date)}", words);
        for (int at = 0; at < plan.Steps.Length; at++) Card(book, planned, plan, at, make, words);
        return book.Pages();
    }

    private static void Card(PacketBook book, PlannedTunnel planned, BuildPlan plan, int at, PacketTableMaker make, CrewWords words)
    {
        BuildStep step = plan.Steps[at];
        book.Chapter(string.Create(CultureInfo.InvariantCulture, $"{at + 1}. {make.Phrased(step.Title)}"));
        book.Paragraph(make.Phrased(step.Purpose));
        book.Points(
        [
            words.Fill("People: {0}. Work: {1} for one person, {2} to {3}.", PacketTableMaker.PeopleOf(step), Hours(step.Work.Likely), Hours(step.Work.Least), Hours(step.Work.Most)),
            step.After.IsEmpty ? words.Say("Waits for nothing.") : words.Fill("After: {0}.", string.Join("; ", step.After.Select(wait => make.WaitOf(plan, wait)))),
            .. Weather(step.Weather, planned.Units) is { Length: > 0 } weather ? (ImmutableArray<string>)[words.Fill("Weather: {0}.", string.Join(", ", weather.Select(make.Phrased)))] : [],
            .. step.InOneGo ? (ImmutableArray<string>)[words.Say("Begin only what can be ended the same day.")] : [],
        ]);
        book.Mind(planned, words, step.Checks.AsSpan());
        foreach (StepCaution caution in step.Cautions) book.Caution($"{words.Say("Caution")}: {words.Say(caution.Id)}", words.Fill(caution.Text));
        book.Heading(words.Say("Do"));
        foreach (StepPart part in step.Parts)
        {
            ImmutableArray<string> does = [.. part.Does.Select(make.Phrased)];
            if (part.Title is { } title) book.Lead(make.Phrased(title), does[0]);
            book.Points(does);
        }
        if (!step.Good.IsEmpty) book.Heading(words.Say("Good when")).Points(step.Good.Select(make.Phrased));
        book.Heading(words.Say("Have at hand"));
        book.Points(
        [
            words.Fill("Tools: {0}.", string.Join(", ", step.Tools.Select(tool => make.ToolOf(tool)))),
            .. step.Materials.IsEmpty ? (ImmutableArray<string>)[] : [words.Fill("Uses: {0}.", make.Uses(step.Materials))],
            words.Fill("Drawings: {0}.", string.Join(", ", step.Drawings.Select(drawing => words.Say(drawing.Replace('-', ' '))))),
        ]);
        book.Heading(words.Say("Overnight")).Paragraph(make.Phrased(step.Overnight));
        if (step.Hold is { } hold) book.Signature(words.Fill("Sign before going on: {0}", make.Phrased(hold)), words.Say("Name, day"));
    }

    /// <summary>What weather a step asks for, in short.</summary>
    internal static ImmutableArray<Phrase> Weather(StepWeather weather, UnitSystem units)
    {
        var says = ImmutableArray.CreateBuilder<Phrase>();
        if (weather.Wind is { } wind) says.Add(new("wind up to {0}", [TapeText.Of(wind, units)]));
        if (weather.Gust is { } gust) says.Add(new("gusts up to {0}", [TapeText.Of(gust, units)]));
        if (weather.Coldest is { } coldest) says.Add(new("air from {0}", [TapeText.Of(coldest, units)]));
        if (weather.Warmest is { } warmest) says.Add(new("air up to {0}", [TapeText.Of(warmest, units)]));
        if (weather.Dry) says.Add(new("dry", []));
        return says.ToImmutable();
    }

    /// <summary>Work to the half hour, as nobody knows it closer.</summary>
    internal static string Hours(TimeSpan work) => string.Create(CultureInfo.InvariantCulture, $"{Math.Max(0.5, Math.Round(work.TotalHours * 2, MidpointRounding.AwayFromZero) / 2):0.#} h");
}
