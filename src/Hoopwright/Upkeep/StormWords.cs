using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Upkeep;

/// <summary>The storm card and a forecast in sentences that can be said in the language of a crew.</summary>
public static class StormWords
{
    /// <summary>What nobody may forget who reads the card.</summary>
    public const string Limits =
        "Worked out for the bows on the assumptions of the plan, the load once and strength reduced; joints and what the maker delivers are not in it. People come first: a licensed engineer and local warnings decide.";

    /// <summary>What stands over the parts that may be weaker than the bows.</summary>
    public const string WeakerTitle = "Maybe before the bows: gusts at which what is allowed is reached";

    /// <summary>How snow lies, or how the tunnel stands.</summary>
    public static string Of(StormState state) => state switch
    {
        StormState.SnowEven => "snow alike on both sides",
        StormState.SnowOneSide => "snow on one side",
        StormState.SnowBetween => "the gap to the next tunnel full",
        StormState.Shut => "shut",
        StormState.Open => "doors or sides open",
        StormState.BareFrame => "bare bows without film",
    };

    /// <summary>What a storm calls for, in short.</summary>
    public static string Of(StormAction action) => action switch
    {
        StormAction.Close => "Close",
        StormAction.Tighten => "Tighten",
        StormAction.StayOut => "Stay out",
        StormAction.WindLimit => "At its limit in wind",
        StormAction.ClearSnow => "Clear the snow",
        StormAction.SnowLimit => "At its limit in snow",
    };

    /// <summary>A gust to the whole mile an hour or metre a second below.</summary>
    public static string Gust(Speed gust, UnitSystem units) =>
        TapeText.Of(units == UnitSystem.Metric ? Speed.FromMetresPerSecond(Math.Floor(gust.MetresPerSecond + 1e-6)) : Speed.FromMilesPerHour(Math.Floor(gust.MilesPerHour + 1e-6)), units);

    /// <summary>A depth of snow, down to what a stick shows.</summary>
    public static string Depth(Length depth, UnitSystem units) => TapeText.Of(TapeText.RoundDownForSnow(depth, units), units);

    /// <summary>What the roof carries, and how the snow lies that reaches it; null where no limit is in reach.</summary>
    public static Phrase? Roof(StormCard card, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(card);
        return card is { RoofSnow: { } roof, RoofSnowLies: { } lies } ? Phrase.Of("At its limit under {0} where the snow lies deepest, {1}. Clear at {2} % of it.", TapeText.Of(roof, units), Of(lies), Number(card.ClearAt.Percent)) : null;
    }

    /// <summary>What of posts, ends and film may reach what is allowed sooner than the bows, and at which gusts.</summary>
    public static ImmutableArray<Phrase> Weaker(StormCard card, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(card);
        return [.. card.Weaker.Select(part => (part.LeastWind, part.MostWind) switch
        {
            ({ } least, { } most) => Phrase.Of("{0}: {1} to {2}", part.Words, Gust(least, units), Gust(most, units)),
            ({ } least, null) => Phrase.Of("{0}: {1} or more", part.Words, Gust(least, units)),
            _ => Phrase.Of("{0}: not known; a test on site has to say", part.Words),
        })];
    }

    /// <summary>A warning as a sentence.</summary>
    public static Phrase Of(StormWarning warning, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(warning);
        string first = Time(warning.First), worst = Time(warning.WorstAt), hours = Number(warning.Hours);
        return warning.Gust is { } gust
            ? Phrase.Of("{0}: gusts of {1} or more from {2}, in {3} hours; strongest {4} at {5}", Of(warning.Action), Gust(warning.GustLimit!.Value, units), first, hours, TapeText.Of(gust, units), worst)
            : Phrase.Of("{0}: {1} of snow and rain reached at {2}; {3} at {4}", Of(warning.Action), TapeText.Of(warning.SnowLimit!.Value, units), first, TapeText.Of(warning.Snow!.Value, units), worst);
    }

    /// <summary>How old the film is on a day and when new film is due.</summary>
    public static Phrase Film(FilmAge film, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(film);
        if (film is not { On: { } on, RecoverFrom: { } from, RecoverBy: { } by })
            return Phrase.Of("It is not said when the film was put on: write it into the plan's upkeep, or sign the step in the site book. Film is made for {0} years here.", Number(film.LifeYears));
        if (film.AgeOn(today) is not { } age) return Phrase.Of("The film goes on {0}; new film is due between {1} and {2}.", Day(on), Day(from), Day(by));
        return today > by
            ? Phrase.Of("The film was put on {0}, {1} years and {2} months ago. Its {3} years are over since {4}: look at it closely before each winter, and change it.", Day(on), Number(age.Years), Number(age.Months), Number(film.LifeYears), Day(by))
            : Phrase.Of("The film was put on {0}, {1} years and {2} months ago. New film is due between {3} and {4}.", Day(on), Number(age.Years), Number(age.Months), Day(from), Day(by));
    }

    /// <summary>A time as the clock of the forecast has it.</summary>
    public static string Time(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(double value) => Math.Round(value).ToString("0", CultureInfo.InvariantCulture);
}
