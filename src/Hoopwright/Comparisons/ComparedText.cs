namespace Hoopwright.Comparisons;

/// <summary>One thing of two plans, as people read it.</summary>
/// <param name="What">What it is.</param>
/// <param name="Before">In the first plan.</param>
/// <param name="After">In the second plan.</param>
/// <param name="Change">What is more or less, where that can be said in a number; else empty.</param>
public sealed record ComparedText(string What, string Before, string After, string Change = "")
{
    /// <summary>True when the two do not read alike.</summary>
    public bool Differs => Before != After;
}
