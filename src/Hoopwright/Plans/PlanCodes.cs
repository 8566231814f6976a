using System.Collections.Immutable;

namespace Hoopwright.Plans;

/// <summary>The codes of everything that can be wrong with a plan document by itself. They never change their meaning.</summary>
public static class PlanCodes
{
    /// <summary>The file holds nothing.</summary>
    public const string Empty = "plan.empty";

    /// <summary>The file is larger than any plan.</summary>
    public const string TooLarge = "plan.too-large";

    /// <summary>Bytes that are no UTF-8 text, or half of a character.</summary>
    public const string BadCharacter = "plan.bad-character";

    /// <summary>The file stops following the rules of JSON.</summary>
    public const string NotJson = "plan.not-json";

    /// <summary>Groups and lists within each other beyond reason.</summary>
    public const string TooDeep = "plan.too-deep";

    /// <summary>The same field twice in one group.</summary>
    public const string DuplicateField = "plan.duplicate-field";

    /// <summary>The format version cannot be read.</summary>
    public const string BadVersion = "plan.bad-version";

    /// <summary>The plan is of a newer version of the format than this program reads.</summary>
    public const string TooNew = "plan.too-new";

    /// <summary>Copies of the plan say different things of a field, and nobody has decided.</summary>
    public const string Undecided = "plan.undecided";

    /// <summary>A field that must be there is not.</summary>
    public const string Missing = "plan.missing-field";

    /// <summary>A field that this version does not know.</summary>
    public const string UnknownField = "plan.unknown-field";

    /// <summary>A list where a text belongs, a text where true or false belongs, and so on.</summary>
    public const string WrongKind = "plan.wrong-kind";

    /// <summary>A text that must say something is empty.</summary>
    public const string EmptyText = "plan.empty-text";

    /// <summary>A quantity without a unit.</summary>
    public const string UnitMissing = "plan.unit-missing";

    /// <summary>A comma in a number: a decimal comma or a thousands separator.</summary>
    public const string CommaInNumber = "plan.comma-in-number";

    /// <summary>A quantity that cannot be read.</summary>
    public const string Unreadable = "plan.unreadable-quantity";

    /// <summary>A text that is no day of the calendar.</summary>
    public const string BadDate = "plan.bad-date";

    /// <summary>A text that is no time of the day.</summary>
    public const string BadClock = "plan.bad-clock";

    /// <summary>A count that is no whole number.</summary>
    public const string NotWhole = "plan.not-whole";

    /// <summary>A word that is none of those a field accepts.</summary>
    public const string UnknownWord = "plan.unknown-word";

    /// <summary>A value outside what its field accepts.</summary>
    public const string OutOfRange = "plan.out-of-range";

    /// <summary>A board size that is not sold.</summary>
    public const string UnknownLumber = "plan.unknown-lumber";

    /// <summary>Two entries of the site book with one identity.</summary>
    public const string SiteBookDuplicate = "plan.site-book.duplicate-id";

    /// <summary>An entry of the site book that sorts before the one above it.</summary>
    public const string SiteBookOrder = "plan.site-book.out-of-order";

    /// <summary>Every code, sorted.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        BadCharacter, BadClock, BadDate, BadVersion, CommaInNumber, DuplicateField, Empty, EmptyText, Missing, NotJson, NotWhole, OutOfRange,
        SiteBookDuplicate, SiteBookOrder, TooDeep, TooLarge, TooNew, Undecided, UnitMissing, UnknownField, UnknownLumber, UnknownWord,
        Unreadable, WrongKind,
    ];
}
