using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>One line of text.</summary>
/// <param name="Layer">The named layer it lies on.</param>
/// <param name="Anchor">A point of its baseline.</param>
/// <param name="Text">The words.</param>
public sealed record TextMark(string Layer, SheetPoint Anchor, string Text) : Mark(Layer)
{
    /// <summary>The words as the lettering can show them.</summary>
    public string Text { get; init; } = Typeface.Shown(Text);

    /// <summary>The least height of capitals on a drawing, mm.</summary>
    public const double LeastCapitalMm = 2.5;

    /// <summary>Type size, mm. Capitals are 0.668 of it high; 2.5 mm capitals unless said.</summary>
    public double EmMm { get; init; } = LeastCapitalMm / Typeface.CapitalEm;

    /// <summary>Regular unless said.</summary>
    public LetterWeight Weight { get; init; }

    /// <summary>Where it lies about its anchor.</summary>
    public TextAlign Align { get; init; }

    /// <summary>Direction of the baseline, anticlockwise as seen from the right.</summary>
    public Angle Turn { get; init; }

    /// <summary>Its colour.</summary>
    public Ink Colour { get; init; }

    /// <summary>True when the paper shows clear behind the letters, so that thin lines stop short of them.</summary>
    public bool Clears { get; init; }

    /// <summary>Its measured width, mm.</summary>
    public double WidthMm => Typeface.Of(Weight).WidthMm(Text, EmMm);

    /// <summary>The rectangle that its letters take.</summary>
    internal TurnedBox Box => TurnedBox.OfText(this);
}
