namespace Hoopwright.Comparisons;

/// <summary>A field that two plans give differently, or that neither gives and for which different values are taken.</summary>
/// <param name="Path">Where in the plan, as dotted names and [index].</param>
/// <param name="Before">As written in the first plan; null where it is silent.</param>
/// <param name="After">As written in the second plan; null where it is silent.</param>
/// <param name="TakenBefore">What the first plan's results rest on where it is silent; null where it speaks or nothing rests on the field.</param>
/// <param name="TakenAfter">The same for the second plan.</param>
public sealed record ComparedField(string Path, string? Before, string? After, string? TakenBefore, string? TakenAfter)
{
    /// <summary>True when neither plan gives it: what is taken follows from other fields that differ.</summary>
    public bool IsDefault => Before is null && After is null;

    /// <summary>The first plan's value in words: as written, as taken, or that there is none.</summary>
    public string BeforeText => Words(Before, TakenBefore);

    /// <summary>The second plan's value in words.</summary>
    public string AfterText => Words(After, TakenAfter);

    private static string Words(string? written, string? taken) => written ?? (taken is null ? "not given" : $"not given; taken: {taken}");
}
