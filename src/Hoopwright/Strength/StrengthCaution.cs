namespace Hoopwright.Strength;

/// <summary>What stands beside every result about strength.</summary>
public static class StrengthCaution
{
    /// <summary>The caution.</summary>
    public const string Text =
        "For planning and comparing only. Loads, soil, steel and joints are as entered or assumed; local code and a licensed engineer decide. " +
        "Torn film, drifts, ice, hung crops or open ends may govern. Never go into a loaded or snow-covered tunnel on the strength of a number.";
}
