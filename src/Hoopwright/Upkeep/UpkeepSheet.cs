using System.Globalization;
using System.Text;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Upkeep;

/// <summary>The upkeep of a tunnel as plain text for people.</summary>
public static class UpkeepSheet
{
    /// <summary>The storm card, the rounds, the film and what the next cover takes.</summary>
    /// <param name="report">The upkeep.</param>
    /// <param name="today">The day it is asked on.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Of(UpkeepReport report, DateOnly today, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        var text = new StringBuilder();
        if (report.Card is { } card) Card(text, card, units);
        else text.Append("No storm card: ").Append(report.NoCard).Append('\n');
        foreach (InspectionRound round in report.Rounds)
        {
            text.Append('\n').Append(round.Title).Append('\n');
            foreach (InspectionItem item in round.Items) text.Append("  [ ] ").Append(item.What).Append('\n');
        }
        text.Append("\nThe film\n  ").Append(StormWords.Film(report.Film, today)).Append('\n');
        text.Append("\nThe next cover takes, beside what can be used again (cut plan: the film cuts of the packet; measure the frame that stands first)\n");
        foreach (MaterialLine line in report.Order) text.Append("  ").Append(MaterialText.Load(line, units)).Append(' ').Append(line.Name).Append('\n');
        return text.ToString();
    }

    /// <summary>A forecast against the card.</summary>
    /// <param name="outlook">The forecast against the card.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Of(StormOutlook outlook, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Forecast {StormWords.Time(outlook.From)} to {StormWords.Time(outlook.To)}: ");
        if (outlook.Gust is { } gust) text.Append(CultureInfo.InvariantCulture, $"strongest gust {TapeText.Of(gust, units)}{(outlook.GustsEstimated ? " (estimated where the forecast has none)" : "")} at {StormWords.Time(outlook.GustAt!.Value)}; ");
        text.Append(CultureInfo.InvariantCulture, $"snow {TapeText.Of(outlook.Snow, units)}, rain on snow {TapeText.Of(outlook.RainOnSnow, units)}, lying already {TapeText.Of(outlook.Lying, units)}.\n");
        if (outlook.HoursUnknown > 0) text.Append(CultureInfo.InvariantCulture, $"In {outlook.HoursUnknown} hours wind or rain is not known: a storm in them is not seen.\n");
        if (outlook.Warnings.IsEmpty) text.Append("Nothing in it reaches what the storm card names.\n");
        foreach (StormWarning warning in outlook.Warnings) text.Append("  ").Append(StormWords.Of(warning, units)).Append('\n');
        text.Append("A forecast is no promise: look again every few hours, and at the roof itself.\n");
        return text.ToString();
    }

    private static void Card(StringBuilder text, StormCard card, UnitSystem units)
    {
        text.Append("STORM CARD\n");
        if (StormWords.Roof(card, units) is { } roof)
        {
            text.Append(roof).Append('\n');
            foreach (SnowClearing snow in card.Snow)
                text.Append(CultureInfo.InvariantCulture, $"  {snow.Kind.Words.ToString(),-26} clear at {StormWords.Depth(snow.ClearAt, units),-10} limit {StormWords.Depth(snow.AtLimit, units),-10} ({TapeText.Of(snow.Kind.Density, units)}; {snow.Kind.Source})\n");
        }
        else
        {
            text.Append("Snow: no limit is in reach.\n");
        }
        if (!card.Gusts.IsEmpty) text.Append("Gusts in the forecast, at 10 m in open country\n");
        foreach (StormGust gust in card.Gusts) text.Append(CultureInfo.InvariantCulture, $"  {StormWords.Gust(gust.Gust, units)} ({gust.Why}): {gust.Does}\n");
        if (!card.Weaker.IsEmpty) text.Append(StormWords.WeakerTitle).Append("; the weaker and the stronger end of what is known of soil, wood and film\n");
        foreach (Phrase weaker in StormWords.Weaker(card, units)) text.Append("  ").Append(weaker).Append('\n');
        if (card.Limits.NoParts is { } none) text.Append(none).Append('\n');
        text.Append("Clearing snow\n");
        for (int at = 0; at < card.Order.Length; at++) text.Append(CultureInfo.InvariantCulture, $"  {at + 1}. {card.Order[at].Text} ({card.Order[at].Source})\n");
        foreach (StepCaution caution in card.Cautions) text.Append("  ! ").Append(caution.Text).Append('\n');
        text.Append(StormWords.Limits).Append('\n');
    }
}
