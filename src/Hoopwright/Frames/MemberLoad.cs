namespace Hoopwright.Frames;

/// <summary>A load spread over a member or over a part of it, straight-lined between its two ends.</summary>
/// <param name="Member">Index of the member.</param>
/// <param name="StartNPerM">Load at the start of the part, N/m.</param>
/// <param name="EndNPerM">Load at the end of the part, N/m.</param>
/// <param name="Frame">Whose axes it follows.</param>
/// <param name="Per">What it is counted along.</param>
/// <param name="FromShare">Where the part starts, as a share of the member from 0 to 1.</param>
/// <param name="ToShare">Where the part ends.</param>
internal sealed record MemberLoad(
    int Member, Vector3 StartNPerM, Vector3 EndNPerM, LoadFrame Frame = LoadFrame.Global, LoadPer Per = LoadPer.Length, double FromShare = 0, double ToShare = 1)
{
    /// <summary>The same load all along a member.</summary>
    internal static MemberLoad Uniform(int member, Vector3 loadNPerM, LoadFrame frame = LoadFrame.Global, LoadPer per = LoadPer.Length) =>
        new(member, loadNPerM, loadNPerM, frame, per);
}
