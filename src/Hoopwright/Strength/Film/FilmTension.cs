using Hoopwright.Sources;

namespace Hoopwright.Strength.Film;

/// <summary>Pull in a film under pressure, and what it does at its edges. Film is taken as a membrane without bending.</summary>
internal static class FilmTension
{
    internal static readonly Formula Hoop = new("T", "p·R", "N/m", Register.Mechanics.At("thin cylinder", Standing.Derived));

    internal static readonly Formula Panel = new("T", "p·s²/(8·f)", "N/m", Register.Mechanics.At("parabolic cable", Standing.Derived));

    internal static readonly Formula PanelStrain = new("ε", "8·f²/(3·s²)", "", Register.Mechanics.At("length of a flat parabola", Standing.Derived));

    internal static readonly Formula ElasticPanel = new("T", "T³ − T0·T² = EA·p²·s²/24", "N/m", Register.Mechanics.At("elastic parabolic cable with pretension", Standing.Derived));

    internal static readonly Formula Cooling = new("σ", "E·α·ΔT; over 1 − ν when held both ways", "Pa", Register.Mechanics.At("restrained thermal strain", Standing.Derived));

    internal static readonly Formula EndBow = new("w", "T0 for each length of the end bow, along the tunnel", "N/m", Citation.Geometry);

    /// <summary>Pull of film that hangs free over an arc.</summary>
    /// <param name="pressurePa">p, at right angles to the film; its size counts.</param>
    /// <param name="radiusM">R of the film.</param>
    internal static double HoopNPerM(double pressurePa, double radiusM) => Math.Abs(pressurePa) * radiusM;

    /// <summary>Stress of a pull.</summary>
    internal static double StressPa(double pullNPerM, double thicknessM) => pullNPerM / thicknessM;

    /// <summary>Pull of film between two bows that sags a known amount.</summary>
    /// <param name="pressurePa">p.</param>
    /// <param name="spanM">s, from bow to bow.</param>
    /// <param name="sagM">f; above 0.</param>
    internal static double PanelNPerM(double pressurePa, double spanM, double sagM) => Math.Abs(pressurePa) * spanM * spanM / (8 * sagM);

    /// <summary>How much longer film is than straight, for a sag that is small beside the span.</summary>
    internal static double PanelStrainOf(double spanM, double sagM) => 8 * sagM * sagM / (3 * spanM * spanM);

    /// <summary>Pull of film between two bows by its own stretch.</summary>
    /// <param name="pressurePa">p.</param>
    /// <param name="spanM">s.</param>
    /// <param name="stiffnessNPerM">EA, Young's modulus times thickness; above 0.</param>
    /// <param name="pretensionNPerM">T0, pull without pressure; 0 or more.</param>
    /// <returns>T; T0 without pressure.</returns>
    internal static double ElasticPanelNPerM(double pressurePa, double spanM, double stiffnessNPerM, double pretensionNPerM)
    {
        double right = stiffnessNPerM * pressurePa * pressurePa * spanM * spanM / 24;
        // T²·(T − T0) rises from 0 at T0, and reaches the right side at T0 + ∛right or before. Newton from above comes down to it.
        double pull = pretensionNPerM + Math.Cbrt(right);
        for (int step = 0; step < 60 && right > 0; step++)
        {
            double next = pull - (((pull * pull * (pull - pretensionNPerM)) - right) / (pull * ((3 * pull) - (2 * pretensionNPerM))));
            if (next >= pull) break;
            pull = next;
        }
        return pull;
    }

    /// <summary>Sag of a panel under a pull; 0 without pressure.</summary>
    internal static double SagM(double pressurePa, double spanM, double pullNPerM) =>
        pressurePa == 0 ? 0 : Math.Abs(pressurePa) * spanM * spanM / (8 * pullNPerM);

    /// <summary>Stress from cooling of film that cannot shorten.</summary>
    /// <param name="youngPa">E, short-term.</param>
    /// <param name="expansionPerK">α.</param>
    /// <param name="dropK">ΔT, how much colder than when it was fastened; 0 or more.</param>
    /// <param name="poisson">ν when held both ways; 0 when held one way.</param>
    internal static double CoolingPa(double youngPa, double expansionPerK, double dropK, double poisson) => youngPa * expansionPerK * dropK / (1 - poisson);
}
