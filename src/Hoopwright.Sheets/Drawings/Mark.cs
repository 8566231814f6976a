namespace Hoopwright.Sheets.Drawings;

/// <summary>One thing drawn: a line, a filled area, a textured area or a text. Writers handle these four and nothing else.</summary>
/// <param name="Layer">The named layer it lies on.</param>
public abstract record Mark(string Layer)
{
    /// <summary>True where a writer that has dimensions of its own draws <see cref="Drawing.Dimensions"/> instead.</summary>
    public bool IsDimension { get; init; }
}
