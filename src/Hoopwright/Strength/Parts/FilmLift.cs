using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Parts;

/// <summary>The roof film as the worst suction lifts it off the bows: a free arc that only its fastenings along the sides hold.</summary>
/// <param name="Combination">The combination that sucks hardest at any place.</param>
/// <param name="GreatestPa">Its greatest suction.</param>
/// <param name="MeanPa">Its mean suction over the film line.</param>
/// <param name="RadiusM">Radius of the arc.</param>
/// <param name="FromFacesRad">Between the film and the face of the board that holds it, left and right.</param>
internal sealed record FilmLift(LoadCombination Combination, double GreatestPa, double MeanPa, double RadiusM, (double Left, double Right) FromFacesRad)
{
    /// <summary>The lifted film; null where no combination sucks at it.</summary>
    internal static FilmLift? Of(Tunnel tunnel, TunnelLoads loads, ImmutableArray<LoadCombination> combinations)
    {
        (LoadCombination? Combination, double GreatestPa, double MeanPa) worst = (null, 0, 0);
        double wholeM = tunnel.Bow.FilmLine.Length.Metres;
        foreach (LoadCombination each in combinations)
        {
            (double greatestPa, double meanPa) = Suction(each, loads, wholeM);
            if (greatestPa > worst.GreatestPa)
                worst = (each, greatestPa, Math.Max(0, meanPa));
        }
        if (worst.Combination is not { } combination) return null;
        Length from = tunnel.Left.ArcToHip, to = tunnel.Bow.FilmLine.Length - tunnel.Right.ArcToHip;
        Geometry.PlanePoint left = tunnel.Bow.FilmLine.PointAt(from), right = tunnel.Bow.FilmLine.PointAt(to);
        double acrossM = (right.Across - left.Across).Metres, upM = (right.Up - left.Up).Metres, arcM = (to - from).Metres;
        double radiusM = ArcRadiusM(arcM, double.Hypot(acrossM, upM)), chordRad = Math.Atan2(upM, acrossM), halfRad = arcM / (2 * radiusM);
        return new FilmLift(combination, worst.GreatestPa, worst.MeanPa, radiusM, (
            Between(chordRad + halfRad, tunnel.Bow.FilmLine.DirectionAt(from).Radians), Between(chordRad - halfRad, tunnel.Bow.FilmLine.DirectionAt(to).Radians)));
    }

    /// <summary>Radius of a circular arc of a length over a chord, m; a half circle's where the film is longer than that.</summary>
    internal static double ArcRadiusM(double arcM, double chordM)
    {
        // sin φ/φ = chord/arc, with φ half the angle of the arc: falls steadily from 1 to 0.
        double low = 1e-6, high = Math.PI;
        for (int round = 0; round < 80; round++)
        {
            double middle = (low + high) / 2;
            (low, high) = Math.Sin(middle) / middle > chordM / arcM ? (middle, high) : (low, middle);
        }
        return arcM / (low + high);
    }

    // Past straight off the face there is no more pull to come.
    private static double Between(double filmRad, double faceRad) => Math.Min(Math.Abs(filmRad - faceRad), Math.PI / 2);

    // Greatest suction anywhere, and the mean over the film line, at the places along the tunnel that get most.
    private static (double GreatestPa, double MeanPa) Suction(LoadCombination combination, TunnelLoads loads, double wholeM)
    {
        double greatestPa = 0, meanPa = 0;
        foreach (CombinationTerm term in combination.Terms)
        {
            foreach (SurfaceLoad surface in loads.Case(term.CaseCode).AtSite()?.Surfaces ?? [])
            {
                double times = term.Factor.Value * (surface.ByLength.IsEmpty ? 1 : surface.ByLength.Max(point => point.Factor.Value));
                greatestPa += times * Math.Max(0, surface.Normal.Points.Select(point => -point.Value.Pascals).DefaultIfEmpty(0).Max());
                double sum = 0;
                for (int at = 1; at < surface.Normal.Points.Length; at++)
                {
                    (ProfilePoint one, ProfilePoint next) = (surface.Normal.Points[at - 1], surface.Normal.Points[at]);
                    sum -= (one.Value.Pascals + next.Value.Pascals) / 2 * (next.Distance - one.Distance).Metres;
                }
                meanPa += times * sum / wholeM;
            }
        }
        return (greatestPa, meanPa);
    }
}
