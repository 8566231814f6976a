using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Geometry;

/// <content>Paths made from a path.</content>
public sealed partial class PlanePath
{
    /// <summary>The same path walked from its end to its start.</summary>
    public PlanePath Reversed() => new([.. Segments.Reverse().Select(segment => segment.Reversed())]);

    /// <summary>The path mirrored about an upright line and walked from its other end, so that left to right stays left to right.</summary>
    public PlanePath Mirrored(Length about) => new([.. Segments.Reverse().Select(segment => segment.Mirrored(about.Metres))]);

    /// <summary>This path and then another that begins where it ends.</summary>
    public PlanePath Then(PlanePath next) => Of(Segments.Concat(next.Segments));

    /// <summary>The part between two distances from the start, which are brought into the path; null when nothing lies between.</summary>
    public PlanePath? Between(Length from, Length to)
    {
        double fromM = Math.Clamp(from.Metres, 0, Length.Metres), toM = Math.Clamp(to.Metres, 0, Length.Metres);
        if (toM - fromM <= Tolerances.SamePointM) return null;

        var parts = ImmutableArray.CreateBuilder<PathSegment>();
        for (int i = 0; i < Segments.Length; i++)
        {
            double lengthM = Segments[i].Length.Metres;
            double partFromM = Math.Max(fromM - startsM[i], 0), partToM = Math.Min(toM - startsM[i], lengthM);
            if (partToM - partFromM <= Tolerances.SamePointM) continue;
            bool whole = partFromM == 0 && partToM == lengthM;
            parts.Add(whole ? Segments[i] : Segments[i].Between(partFromM, partToM));
        }

        return parts.Count == 0 ? null : new PlanePath(parts.ToImmutable());
    }

    /// <summary>
    /// The path at a constant distance to one side. Tangent joints stay joined; at a corner the neighbours are cut back, or
    /// run on, to where they meet. An arc that bends to that side loses the distance from its radius, the other kind gains it.
    /// </summary>
    /// <param name="distance">How far; 0 or more.</param>
    /// <param name="side">To which side of travel.</param>
    /// <returns>The path, or null when an arc or a piece between corners is used up.</returns>
    public PlanePath? Offset(Length distance, PathSide side)
    {
        double leftM = side switch
        {
            PathSide.Left => distance.Metres,
            PathSide.Right => -distance.Metres,
        };
        var moved = new PathSegment[Segments.Length];
        for (int i = 0; i < moved.Length; i++)
        {
            if (Segments[i].OffsetLeft(leftM) is not PathSegment offset) return null;
            moved[i] = offset;
        }

        var meetings = new PlaneVector?[moved.Length + 1];
        for (int i = 1; i < moved.Length; i++)
        {
            double cornerRad = Tolerances.WrapRad(Segments[i].StartDirectionRad - Segments[i - 1].EndDirectionRad);
            bool tangent = (moved[i].StartM - moved[i - 1].EndM).SizeM <= Tolerances.SamePointM;
            if (tangent || Math.Abs(cornerRad) <= Tolerances.SameDirectionRad) continue;
            if (Meeting.Of(moved[i - 1], moved[i]) is not PlaneVector meeting) return null;
            meetings[i] = meeting;
        }

        for (int i = 0; i < moved.Length; i++)
        {
            if (meetings[i] is null && meetings[i + 1] is null) continue;
            PathSegment? trimmed = moved[i].Retrimmed(meetings[i] ?? moved[i].StartM, meetings[i + 1] ?? moved[i].EndM);
            if (trimmed is null) return null;
            moved[i] = trimmed;
        }

        return moved.Any(segment => segment.Length.Metres > Tolerances.SamePointM) ? Of(moved) : null;
    }
}
