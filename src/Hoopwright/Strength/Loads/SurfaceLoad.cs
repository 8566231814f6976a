using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>A factor on a load at a place along the tunnel.</summary>
/// <param name="Along">Distance from the middle of the first bow.</param>
/// <param name="Factor">The factor there.</param>
public readonly record struct LengthPoint(Length Along, Ratio Factor);

/// <summary>
/// A load on the film of roof and sides, the same at every bow but for <see cref="ByLength"/>. A bow gets it times the width of
/// film that it carries: half the bay on either side.
/// </summary>
public sealed record SurfaceLoad
{
    /// <summary>Pressure square to the film; positive presses inwards on the bow.</summary>
    public LoadProfile Normal { get; init; } = LoadProfile.None;

    /// <summary>Load straight down, over the plan: snow and crops.</summary>
    public LoadProfile PlanGravity { get; init; } = LoadProfile.None;

    /// <summary>Load straight down, over the surface: the film itself.</summary>
    public LoadProfile SurfaceGravity { get; init; } = LoadProfile.None;

    /// <summary>Level load across, over the upright area seen from the side; positive to the right. Only the least wind of a code.</summary>
    public LoadProfile Sideways { get; init; } = LoadProfile.None;

    /// <summary>
    /// Factor by place along the tunnel, straight between the points, a jump where two have one place, and the first and last
    /// value beyond them; none means 1 throughout.
    /// </summary>
    public ImmutableArray<LengthPoint> ByLength { get; init; } = [];

    /// <summary>The mean factor of the film from one place to another along the tunnel.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End, not before the start; at the start, the factor there.</param>
    public Ratio FactorBetween(Length from, Length to)
    {
        if (ByLength.IsEmpty) return Ratio.FromValue(1);
        double fromM = from.Metres, toM = to.Metres;
        if (toM <= fromM) return Ratio.FromValue(FactorAt(fromM));
        double sum = 0, atM = fromM;
        foreach (double nextM in ByLength.Select(point => point.Along.Metres).Where(place => place > fromM && place < toM).Append(toM))
        {
            // Straight in between, so two inner points give the exact mean.
            double third = (nextM - atM) / 3;
            sum += (FactorAt(atM + third) + FactorAt(nextM - third)) / 2 * (nextM - atM);
            atM = nextM;
        }
        return Ratio.FromValue(sum / (toM - fromM));
    }

    /// <summary>The same load times a number.</summary>
    public SurfaceLoad Times(Ratio times) => this with
    {
        Normal = Normal.Times(times),
        PlanGravity = PlanGravity.Times(times),
        SurfaceGravity = SurfaceGravity.Times(times),
        Sideways = Sideways.Times(times),
    };

    private double FactorAt(double alongM)
    {
        if (alongM <= ByLength[0].Along.Metres) return ByLength[0].Factor.Value;
        for (int i = 1; i < ByLength.Length; i++)
        {
            double fromM = ByLength[i - 1].Along.Metres, toM = ByLength[i].Along.Metres;
            if (alongM > toM || fromM == toM) continue;
            double from = ByLength[i - 1].Factor.Value, to = ByLength[i].Factor.Value;
            return from + ((to - from) * (alongM - fromM) / (toM - fromM));
        }
        return ByLength[^1].Factor.Value;
    }
}
