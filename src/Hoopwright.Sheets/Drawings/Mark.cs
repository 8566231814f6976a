namespace Hoopwright.Sheets.Drawings;

/// <summary>One thing drawn: a line, a filled area, a textured area or a text. Writers handle these four and nothing else.</summary>
/// <param name="Layer">The named layer it lies on.</param>
public abstract record Mark(string Layer);
