using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>How much of what is allowed is used, in words.</summary>
public static class UsedWords
{
    private const double NoLongerTold = 100;

    /// <summary>Two decimals; "beyond all" where there is no such part, or it is so many times that its number says nothing.</summary>
    public static string Of(Ratio? used) => used is { Value: < NoLongerTold } given ? FormattableString.Invariant($"{given.Value:0.00}") : "beyond all";

    /// <summary>From the upper to the lower end of what is known, once where both are the same.</summary>
    public static string Of(PartStrength part)
    {
        ArgumentNullException.ThrowIfNull(part);
        string strongest = Of(part.AtStrongest), weakest = Of(part.AtWeakest);
        return strongest == weakest ? strongest : $"{strongest} to {weakest}";
    }
}
