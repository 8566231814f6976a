using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>The section of a member: a tube or a board.</summary>
public abstract record MemberSection
{
    private protected MemberSection()
    {
    }

    /// <summary>The item of the takeoff that the member is cut from: <c>tube</c>, <c>board</c> or <c>post</c>.</summary>
    public abstract string Item { get; }

    /// <summary>The size as the takeoff writes it.</summary>
    public abstract string Size { get; }

    /// <summary>Does one thing for a tube, another for a board.</summary>
    public abstract T Match<T>(Func<TubeSection, T> tube, Func<BoardSection, T> board);
}

/// <summary>A tube.</summary>
/// <param name="Outside">Outside diameter, or outside width of a square tube.</param>
/// <param name="Wall">Wall thickness.</param>
/// <param name="Form">round or square.</param>
/// <param name="Material">What it is made of.</param>
public sealed record TubeSection(Length Outside, Length Wall, TubeForm Form, TubeMaterial Material) : MemberSection
{
    /// <inheritdoc/>
    public override string Item => Material switch { TubeMaterial.GalvanizedSteel => "tube", TubeMaterial.Pvc => "plastic pipe" };

    /// <inheritdoc/>
    public override string Size => (IsMetric
        ? FormattableString.Invariant($"{Outside.Millimetres:0.#} x {Wall.Millimetres:0.##} mm")
        : FormattableString.Invariant($"{Outside.Inches:0.000} x {Wall.Inches:0.000} in")) + (Form == TubeForm.Square ? " square" : "");

    /// <summary>The width alone, as what fits the tube is named by.</summary>
    internal string WidthText => IsMetric ? FormattableString.Invariant($"{Outside.Millimetres:0.#} mm") : FormattableString.Invariant($"{Outside.Inches:0.000} in");

    /// <summary>The widths of two tubes, as what joins them is named by: in millimetres where both are.</summary>
    internal static string WidthsText(TubeSection one, TubeSection other) => one.IsMetric && other.IsMetric
        ? FormattableString.Invariant($"{one.Outside.Millimetres:0.#} to {other.Outside.Millimetres:0.#} mm")
        : FormattableString.Invariant($"{one.Outside.Inches:0.000} to {other.Outside.Inches:0.000} in");

    /// <summary>True for a tube whose width is a round number of millimetres and not of thousandths of an inch.</summary>
    private bool IsMetric => IsWhole(Outside.Millimetres * 10) && !IsWhole(Outside.Inches * 1000);

    /// <inheritdoc/>
    public override T Match<T>(Func<TubeSection, T> tube, Func<BoardSection, T> board) => tube(this);

    private static bool IsWhole(double value) => Math.Abs(value - Math.Round(value)) < Tolerances.PlaceM;
}

/// <summary>A board or a wood post.</summary>
/// <param name="Nominal">Nominal size such as 2x6.</param>
/// <param name="Thickness">The smaller dressed dimension.</param>
/// <param name="Depth">The larger dressed dimension.</param>
/// <param name="Treated">True when treated for ground contact.</param>
public sealed record BoardSection(string Nominal, Length Thickness, Length Depth, bool Treated) : MemberSection
{
    /// <inheritdoc/>
    public override string Item => Thickness.Inches > 3 ? "post" : "board";

    /// <inheritdoc/>
    public override string Size => Treated ? Nominal + " treated" : Nominal;

    /// <inheritdoc/>
    public override T Match<T>(Func<TubeSection, T> tube, Func<BoardSection, T> board) => board(this);
}
