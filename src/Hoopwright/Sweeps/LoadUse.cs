using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>How far the entered loads use a tunnel, in one number a part, so that designs that do not stand can still be told apart.</summary>
internal static class LoadUse
{
    // Beyond this a part is simply far from standing; it keeps one hopeless part from hiding what helps the others.
    private const double Most = 1000;

    /// <summary>The part that is used most: 1 is just at its limit; null when no loads are entered or the frame is not checked.</summary>
    public static (string Part, double Used)? Worst(StrengthReport strength) => Has(strength) ? Parts(strength).MaxBy(part => Math.Round(part.Used, 6)) : null;

    /// <summary>
    /// How far the tunnel is from standing: the sum over bows, row, posts and film of the logarithm of how many times each passes its
    /// limit at the weak end of what is known; 0 when none does, or when no loads are entered.
    /// </summary>
    public static double Short(StrengthReport strength) => Has(strength) ? Parts(strength).Sum(part => Math.Log(Math.Clamp(part.Used, 1, Most))) : 0;

    private static bool Has(StrengthReport strength) => strength.NotChecked is null && strength.Verdict != StrengthVerdict.NothingEntered;

    private static List<(string Part, double Used)> Parts(StrengthReport strength)
    {
        List<(string Part, double Used)> parts = [("bows", Bows(strength))];
        if (strength.Row is { Buckles.IsEmpty: false }) parts.Add(("the whole row buckles", Most));
        else if (strength.Row?.Parts.MaxBy(part => part.Utilisation?.Value ?? Most) is { } worst) parts.Add(($"{worst.Kind} in the row", worst.Utilisation?.Value ?? Most));
        parts.AddRange(strength.Parts.Select(part => (part.Words, part.AtWeakest?.Value ?? Most)));
        return parts;
    }

    /// <summary>Of the bows: what the worst combination uses; and how many times the entered snow or wind pressure is what the code's limit allows with the weakest steel and feet, which tells also where the bow buckles.</summary>
    private static double Bows(StrengthReport strength)
    {
        double combination = strength.Combinations is [{ Utilisation: { } most }, ..] ? most.Value : 0;
        double snow = strength is { Loads.GroundSnow: { } snowAsked } && strength.InSnow(StrengthLevel.Code)?.GroundSnow is { } snowRange ? Times(snowAsked.Pascals, snowRange.Least.Pascals) : 0;
        double wind = strength is { Loads.Wind: { } windAsked } && strength.InWind(StrengthLevel.Code)?.Wind is { } windRange ? Times(Square(windAsked), Square(windRange.Least)) : 0;
        bool buckles = strength.Combinations is [{ Utilisation: null }, ..];
        double worst = Math.Max(combination, Math.Max(snow, wind));
        return buckles ? Math.Max(worst, 1) : worst;
    }

    private static double Square(Speed speed) => speed.MetresPerSecond * speed.MetresPerSecond;

    private static double Times(double asked, double limit) => asked <= 0 ? 0 : limit <= asked / Most ? Most : asked / limit;
}
