using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>The tube of a bow and its steel as the checks see them.</summary>
internal sealed record BowSteel
{
    private readonly RoundTube? _round;
    private readonly SquareTube? _square;

    /// <summary>A round tube is checked by AISI S100, a square one by AISC 360.</summary>
    /// <param name="section">The tube; of steel.</param>
    /// <param name="grade">Its steel.</param>
    internal BowSteel(Layout.TubeSection section, SteelGrade grade)
    {
        Grade = grade;
        (_round, _square) = section.Form switch
        {
            TubeForm.Round => (new RoundTube(section.Outside, section.Wall), (SquareTube?)null),
            TubeForm.Square => (null, new SquareTube(section.Outside, section.Wall)),
        };
        AreaM2 = TubeWeights.AreaM2(section);
        SecondM4 = TubeWeights.SecondM4(section);
        NPerM = TubeWeights.NPerM(section);
        TorsionM4 = _round is null ? SquareTorsionM4(section) : 2 * SecondM4;
    }

    /// <summary>The steel.</summary>
    internal SteelGrade Grade { get; init; }

    /// <summary>Area, m².</summary>
    internal double AreaM2 { get; }

    /// <summary>Second moment, m⁴.</summary>
    internal double SecondM4 { get; }

    /// <summary>Torsion constant, m⁴.</summary>
    internal double TorsionM4 { get; }

    /// <summary>Radius of gyration, m.</summary>
    internal double GyrationM => Math.Sqrt(SecondM4 / AreaM2);

    /// <summary>Weight, N/m.</summary>
    internal double NPerM { get; }

    /// <summary>Strengths of a member of it.</summary>
    /// <param name="elasticBucklingPa">Fe, stress at which it would buckle if it never yielded.</param>
    /// <param name="lengthM">Length between supports, for shear and torsion.</param>
    /// <param name="method">Allowable strength or factored loads.</param>
    internal TubeStrength StrengthOf(double elasticBucklingPa, double lengthM, DesignMethod method) => _round is { } round
        ? AisiTube.StrengthOf(Steel.TubeSection.Of(round), Grade.Aisi, elasticBucklingPa, lengthM, AreaM2, method)
        : AiscSquareTube.StrengthOf(_square!, Grade.Aisc, elasticBucklingPa, AreaM2, method);

    // Bredt: J = 4·A²·t/U for a thin closed section.
    private static double SquareTorsionM4(Layout.TubeSection section)
    {
        double middleM = section.Outside.Metres - section.Wall.Metres;
        return middleM * middleM * middleM * section.Wall.Metres;
    }
}
