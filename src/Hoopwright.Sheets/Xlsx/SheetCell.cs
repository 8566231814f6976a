namespace Hoopwright.Sheets.Xlsx;

/// <summary>A cell: words, a number, nothing, or a formula with what it gives.</summary>
/// <param name="Words">Words, or those that the formula gives; null otherwise.</param>
/// <param name="Number">A number, or what the formula gives; null otherwise.</param>
/// <param name="Formula">A formula without its equals sign; null otherwise.</param>
internal readonly record struct SheetCell(string? Words, decimal? Number, string? Formula)
{
    /// <summary>Nothing.</summary>
    public static SheetCell Empty => default;

    public static SheetCell Of(string words) => new(words, null, null);

    public static SheetCell Of(decimal? number) => new(null, number, null);

    public static SheetCell Of(int number) => new(null, number, null);

    public static SheetCell Calculated(string formula, decimal gives) => new(null, gives, formula);

    public static SheetCell Calculated(string formula, string gives) => new(gives, null, formula);
}
