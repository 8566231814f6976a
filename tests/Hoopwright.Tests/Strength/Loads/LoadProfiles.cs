using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Loads;

/// <summary>What the tests of loads share: planning them, and adding a profile up over its bow.</summary>
internal static class LoadProfiles
{
    public static TunnelLoads Of(Plan plan) => LoadPlanner.Plan(SamplePlans.LayOut(plan), new Answers(plan.Units ?? UnitSystem.UsCustomary));

    /// <summary>The load at a distance across, in Pa.</summary>
    public static double AtAcrossPa(this LoadProfile profile, PlanePath film, double acrossM) =>
        profile.At(film.CrossingsAtAcross(Length.FromMetres(acrossM)).MaxBy(crossing => crossing.Point.Up).Distance).Pascals;

    /// <summary>Across, up and level totals of a case on a metre of tunnel, in N: loads square to the film, and loads from above.</summary>
    public static (double AcrossN, double UpN) Total(this LoadCase load, PlanePath film)
    {
        double acrossN = 0, upN = 0;
        foreach (SurfaceLoad surface in load.Surfaces)
        {
            double[] places =
            [
                .. surface.Normal.Points.Concat(surface.PlanGravity.Points).Concat(surface.SurfaceGravity.Points).Concat(surface.Sideways.Points).Select(point => point.Distance.Metres)
                    .Concat(Enumerable.Range(0, 401).Select(step => film.Length.Metres * step / 400)).Distinct().Order(),
            ];
            for (int i = 1; i < places.Length; i++)
            {
                // The middle of a stretch without a jump stands for it.
                var middle = Length.FromMetres((places[i - 1] + places[i]) / 2);
                PlanePoint from = film.PointAt(Length.FromMetres(places[i - 1])), to = film.PointAt(Length.FromMetres(places[i]));
                double dx = (to.Across - from.Across).Metres, dz = (to.Up - from.Up).Metres;
                double normal = surface.Normal.At(middle).Pascals;
                // Walking left to right over the film, inwards is to the right of the way: (dz, -dx).
                acrossN += normal * dz;
                upN -= normal * dx;
                upN -= surface.PlanGravity.At(middle).Pascals * Math.Abs(dx);
                upN -= surface.SurfaceGravity.At(middle).Pascals * Math.Sqrt((dx * dx) + (dz * dz));
                acrossN += surface.Sideways.At(middle).Pascals * Math.Abs(dz);
            }
        }
        return (acrossN, upN);
    }
}
