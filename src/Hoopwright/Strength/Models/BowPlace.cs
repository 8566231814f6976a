using System.Collections.Immutable;

namespace Hoopwright.Strength.Models;

/// <summary>Where a bow stands in the row, what it is made of and what it carries.</summary>
internal sealed record BowPlace
{
    /// <summary>Its number, 1 at the front.</summary>
    internal required int Number { get; init; }

    /// <summary>Names of the members that are its pieces.</summary>
    internal required ImmutableHashSet<string> BowIds { get; init; }

    /// <summary>True when left and right of the bow mirror each other.</summary>
    internal required bool IsEven { get; init; }

    /// <summary>Start of the film that it carries, m along the tunnel.</summary>
    internal required double FilmFromM { get; init; }

    /// <summary>End of the film that it carries, m along the tunnel.</summary>
    internal required double FilmToM { get; init; }

    /// <summary>Width of the film that it carries: half the bay on either side.</summary>
    internal double FilmWidthM => FilmToM - FilmFromM;

    /// <summary>Its tie; null for none.</summary>
    internal required BowTie? Tie { get; init; }

    /// <summary>Where lengthwise members meet it.</summary>
    internal required ImmutableArray<BowJoint> Joints { get; init; }

    /// <summary>Weights that hang from its nodes, N: purlins, its tie.</summary>
    internal required ImmutableArray<(int Node, double WeightN)> HungN { get; init; }

    /// <summary>Weight of its tube, N/m.</summary>
    internal required double TubeNPerM { get; init; }

    /// <summary>Axial stiffness of its tube, N.</summary>
    internal required double EaN { get; init; }

    /// <summary>Thermal expansion of its tube, per K.</summary>
    internal required double ExpansionPerK { get; init; }

    /// <summary>Distance along the middle of its tube of the place nearest to a point of the tunnel.</summary>
    internal required Func<Geometry.TunnelPoint, double> AlongM { get; init; }
}

/// <summary>A straight tie of a bow.</summary>
/// <param name="Id">The member.</param>
/// <param name="FromNode">Node at its left end.</param>
/// <param name="ToNode">Node at its right end.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="AreaM2">Area of its section, m².</param>
/// <param name="PressedN">Compression that may be put on it over its whole length, N: past it, it bows out and the bow is taken without it.</param>
internal sealed record BowTie(string Id, int FromNode, int ToNode, double LengthM, double AreaM2, double PressedN);

/// <summary>Where a lengthwise member meets a bow.</summary>
/// <param name="MemberId">The member.</param>
/// <param name="Node">The node.</param>
/// <param name="CarriedM">Length of it that the bow carries, m.</param>
internal sealed record BowJoint(string MemberId, int Node, double CarriedM);
