namespace Hoopwright.Strength;

/// <summary>Verdicts as people read them.</summary>
public static class VerdictWords
{
    /// <summary>A verdict in words.</summary>
    public static string Of(StrengthVerdict verdict) => verdict switch
    {
        StrengthVerdict.Stands => "stands",
        StrengthVerdict.Marginal => "marginal",
        StrengthVerdict.DoesNotStand => "does not stand",
        StrengthVerdict.NothingEntered => "no loads entered",
    };
}
