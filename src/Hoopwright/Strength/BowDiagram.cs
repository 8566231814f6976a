using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>Forces and movements of one bow under one combination, node by node from the left foot to the right one.</summary>
/// <param name="Bow">Number of the bow.</param>
/// <param name="Code">The combination.</param>
/// <param name="Words">In words.</param>
/// <param name="Points">The nodes.</param>
/// <param name="LeftFoot">What the ground puts on the left foot.</param>
/// <param name="RightFoot">What the ground puts on the right foot.</param>
public sealed record BowDiagram(int Bow, string Code, string Words, ImmutableArray<BowDiagramPoint> Points, FootReaction LeftFoot, FootReaction RightFoot)
{
    // The largest movement is drawn as so much of the span.
    private const double MovedShare = 0.09;

    /// <summary>How far the node moves that moves most.</summary>
    public Length MostMoved => Length.FromMetres(Points.Max(point => double.Hypot(point.MovedAcross.Metres, point.MovedUp.Metres)));

    /// <summary>How many times larger than they are movements are drawn, so that they are seen: 1, 2 or 5 times a power of ten; 1 where nothing moves.</summary>
    public double TimesDrawn
    {
        get
        {
            double mostM = MostMoved.Metres;
            if (mostM < 1e-6) return 1;
            double value = MovedShare * Math.Abs((Points[^1].Place.Across - Points[0].Place.Across).Metres) / mostM, ten = Math.Pow(10, Math.Floor(Math.Log10(value)));
            return value >= 5 * ten ? 5 * ten : value >= 2 * ten ? 2 * ten : ten;
        }
    }
}

/// <summary>A node of a bow under load. Forces are those of the chord after it; at the last node those of the chord before it.</summary>
/// <param name="Place">Where it stands, on the middle of the tube.</param>
/// <param name="MovedAcross">How far it moves to the right.</param>
/// <param name="MovedUp">How far it moves up.</param>
/// <param name="Axial">Axial force; tension positive.</param>
/// <param name="Shear">Shear force.</param>
/// <param name="Moment">Bending moment; positive when it stretches the inside of the bow at the crown.</param>
/// <param name="Utilisation">Demand over strength.</param>
public sealed record BowDiagramPoint(PlanePoint Place, Length MovedAcross, Length MovedUp, Force Axial, Force Shear, Moment Moment, Ratio Utilisation);

/// <summary>What the ground puts on a foot.</summary>
/// <param name="Across">Force to the right.</param>
/// <param name="Up">Force up; negative when the foot is pulled out of the ground.</param>
/// <param name="Turning">Moment, from across to up.</param>
public sealed record FootReaction(Force Across, Force Up, Moment Turning);
