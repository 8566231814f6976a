using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>
/// Reads plan documents: JSON with comments and trailing commas, UTF-8 with or without a mark. Whatever the bytes are, the
/// answer is a plan and a list of diagnostics, never an exception.
/// </summary>
public static class PlanReader
{
    /// <summary>Reads a plan.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <returns>The plan as far as it could be read, with everything that is wrong in the file by itself.</returns>
    public static PlanReading Read(ReadOnlyMemory<byte> utf8)
    {
        var problems = new PlanProblems();
        if (ReadGroup(utf8, problems, "A plan") is not { } document)
            return new PlanReading(new Plan(), tooNew: false, problems.InOrder(), document: null, problems.BrokeOff);

        problems.Units = Word(document, "units") == "metric" ? UnitSystem.Metric : UnitSystem.UsCustomary;
        var version = Word(document, "hoopwright") is { } written ? PlanVersion.Read(written) : null;
        if (version is { } given && given.Major != PlanVersion.Current.Major)
            return new PlanReading(new Plan(), tooNew: true, [TooNew(given)], document);

        problems.KeepsUnknown = version is { } known && known.CompareTo(PlanVersion.Current) > 0;
        var plan = PlanFormats.Plan.Read(document, problems);
        return new PlanReading(plan, tooNew: false, problems.InOrder(), document, problems.BrokeOff);
    }

    /// <summary>Reads a price book that is a file of its own, in the shape of the plan's section <c>prices</c>.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <returns>The price book as far as it could be read, and what is wrong with it.</returns>
    public static (Prices Prices, ImmutableArray<Diagnostic> Diagnostics) ReadPrices(ReadOnlyMemory<byte> utf8)
    {
        var problems = new PlanProblems();
        var prices = ReadGroup(utf8, problems, "A price book") is { } document ? OrderFormats.Prices.Read(document, problems) : new Prices();
        return (prices, problems.InOrder());
    }

    private static PlanNode? ReadGroup(ReadOnlyMemory<byte> utf8, PlanProblems problems, string what)
    {
        var document = PlanDocument.Read(utf8.Span, problems);
        if (document is null or { Kind: PlanNodeKind.Group })
            return document;
        problems.Error(PlanCodes.WrongKind, document, $"{what} is a group of fields in {{ }}.", "{ … }");
        return null;
    }

    private static string? Word(PlanNode document, string field) =>
        document.Children.FirstOrDefault(child => child.Name == field) is { Kind: PlanNodeKind.Text } node ? node.Text : null;

    private static Diagnostic TooNew(PlanVersion version) => new(
        PlanCodes.TooNew, Severity.Error, "hoopwright",
        "The plan was written by a newer version of the program than this one, so it is left as it is.",
        version.ToString(), $"version {PlanVersion.Current}, or a newer version of the program");
}
