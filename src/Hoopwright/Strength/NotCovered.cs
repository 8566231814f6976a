namespace Hoopwright.Strength;

/// <summary>Why something is not checked at all. There is no utilisation to print, and none may be made up.</summary>
/// <param name="Reason">One sentence.</param>
internal sealed record NotCovered(string Reason)
{
    /// <summary>Plastic pipe: it creeps and softens with heat, and no standard for building frames gives it design values.</summary>
    internal static NotCovered PlasticPipe { get; } = new(
        "Plastic pipe is not checked: it creeps under lasting load and softens in heat, and the standards used here do not cover it. Clear every snow or take the cover off.");
}
