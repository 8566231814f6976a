namespace Hoopwright.Strength.Soil;

/// <summary>A post in its soil.</summary>
/// <param name="EmbedmentM">From the ground to the foot of the post, or of its concrete.</param>
/// <param name="WidthM">b: diameter of the post or of its concrete; diagonal of a square post.</param>
/// <param name="FrostDepthM">How deep the ground freezes; soil above is not counted.</param>
internal readonly record struct PostInGround(double EmbedmentM, double WidthM, double FrostDepthM = 0)
{
    /// <summary>Depth below the frost line; 0 or more.</summary>
    internal double CountedDepthM => Math.Max(0, EmbedmentM - FrostDepthM);
}
