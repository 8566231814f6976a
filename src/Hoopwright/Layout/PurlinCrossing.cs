using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Where a purlin crosses every bow, as a tape finds it.</summary>
/// <param name="MemberId">The purlin.</param>
/// <param name="Across">Its middle from the left ground line.</param>
/// <param name="Up">Its middle over the ground line.</param>
/// <param name="FromRidge">Over the outside of the bow, from the ridge to the place above its middle.</param>
/// <param name="FromFoot">Over the outside of the bow, from the ground line of its side to the place above its middle; of the left side at the ridge.</param>
public sealed record PurlinCrossing(string MemberId, Length Across, Length Up, Length FromRidge, Length FromFoot)
{
    private const int Steps = 40, Narrowings = 60;

    /// <summary>Every purlin, ridge first.</summary>
    public static ImmutableArray<PurlinCrossing> Of(Tunnel tunnel) =>
    [
        .. tunnel.Members.Where(member => member.Role is MemberRole.RidgePurlin or MemberRole.Purlin).Select(member =>
        {
            PlanePoint at = new(member.Start.X, member.Start.Z - tunnel.Stations[0].Base);
            PlanePath line = tunnel.Bow.FilmLine;
            // Under a pointed ridge the place nearest the purlin lies beside the ridge, once on each side.
            Length half = line.Length / 2, fromLeft = member.Role == MemberRole.RidgePurlin ? half : Nearest(line, at);
            return new PurlinCrossing(member.Id, at.Across, at.Up, (fromLeft - half).Abs(), Length.Min(fromLeft, line.Length - fromLeft));
        }),
    ];

    /// <summary>How far along a path its point nearest to another lies: the best of many, then narrowed.</summary>
    private static Length Nearest(PlanePath path, PlanePoint to)
    {
        double length = path.Length.Metres, step = length / Steps;
        double best = Enumerable.Range(0, Steps + 1).MinBy(index => Apart(index * step)) * step;
        (double low, double high) = (Math.Max(0, best - step), Math.Min(length, best + step));
        for (int narrowing = 0; narrowing < Narrowings; narrowing++)
        {
            double one = low + ((high - low) / 3), other = high - ((high - low) / 3);
            if (Apart(one) < Apart(other)) high = other;
            else low = one;
        }
        return Length.FromMetres((low + high) / 2);

        double Apart(double along)
        {
            PlanePoint point = path.PointAt(Length.FromMetres(along));
            double across = (point.Across - to.Across).Metres, up = (point.Up - to.Up).Metres;
            return (across * across) + (up * up);
        }
    }
}
