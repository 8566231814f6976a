using Hoopwright.Frames;
using Hoopwright.Sources;

namespace Hoopwright.Cover.Pull;

/// <summary>
/// A film that is held along its edges, by temperature: how stiff it is, how it pulls when it is held shorter than it wants to
/// be, how it hangs when it is longer. Strains are parts of the length that is held: above 0 stretched, below 0 slack.
/// </summary>
internal static class FilmSheet
{
    /// <summary>Temperature at which E was measured, K.</summary>
    internal const double MeasuredAtK = 296.15;

    /// <summary>How fast film stiffens as it cools, 1/K: E twice as high some 35 K colder.</summary>
    internal const double StiffeningPerK = 0.02;

    private const int Halvings = 60;

    internal static readonly Formula Stiffening = new("E", "E₂₃·exp(-0.02·(T - 23 °C)), low-density polyethylene", "Pa", Citation.FromMemory);

    internal static readonly Formula Held = new("ε", "ε₀ + (α - α_frame)·(T_pulled - T)", "", Register.Mechanics.At("thermal strain of what is held", Standing.Derived));

    internal static readonly Formula Pull = new("T", "E·t·ε/(1 - ν), held both ways; none when slack", "N/m", FilmMaterial.Membrane);

    internal static readonly Formula Crept = new("T", "a third of it: what is left of E after weeks", "N/m", FilmStrength.LastingYoungPart.Source);

    internal static readonly Formula Slack = new("f", "s·√(3·|ε|/8)", "m", FilmMaterial.Membrane);

    /// <summary>How much more than the steel below it film lengthens, 1/K.</summary>
    internal static double PerK => FilmMaterial.PerK - FrameMaterial.Steel.ExpansionPerK;

    /// <summary>E in a short load, Pa.</summary>
    internal static double YoungPa(double filmK) => FilmMaterial.YoungPa * Math.Exp(-StiffeningPerK * (filmK - MeasuredAtK));

    /// <summary>Strain at one temperature of film that had another when it was fastened.</summary>
    internal static double StrainAt(double filmK, double pulledStrain, double pulledAtK) => pulledStrain + (PerK * (pulledAtK - filmK));

    /// <summary>Pull of film held both ways, N for each metre across it; 0 when it is slack.</summary>
    internal static double PullNPerM(double strain, double filmK, double thicknessM) =>
        Math.Max(0, strain) * YoungPa(filmK) * thicknessM / (1 - FilmMaterial.Poisson);

    /// <summary>
    /// How far film hangs at the middle between two bows by its own weight: the sag f at which w·s²/(8·f) is the pull of film that
    /// is stretched by ε and by the sag, E·t·(ε + 8·f²/(3·s²)).
    /// </summary>
    /// <param name="strain">ε.</param>
    /// <param name="filmK">Its temperature, K.</param>
    /// <param name="thicknessM">t of all layers, m.</param>
    /// <param name="baySpanM">s, m.</param>
    internal static double SagM(double strain, double filmK, double thicknessM, double baySpanM)
    {
        double weightPa = thicknessM * FilmMaterial.KgM3 * FrameWeights.GravityMps2, stiffness = YoungPa(filmK) * thicknessM;
        return Root(sagM => (8 * sagM * Math.Max(0, stiffness * (strain + FilmTension.SaggingStrain(baySpanM, sagM)))) - (weightPa * baySpanM * baySpanM), baySpanM);
    }

    /// <summary>
    /// How far film gives under a push at the middle between two bows, about as wide a strip carrying as the bows are apart:
    /// F = 4·δ·E·t·(ε + 2·δ²/s²).
    /// </summary>
    internal static double GiveM(double pushN, double strain, double filmK, double thicknessM, double baySpanM)
    {
        double stiffness = YoungPa(filmK) * thicknessM;
        return Root(giveM => (4 * giveM * Math.Max(0, stiffness * (strain + (2 * giveM * giveM / (baySpanM * baySpanM))))) - pushN, baySpanM);
    }

    /// <summary>The strain at which slack film hangs by a part of the bay: 8/3·(f/s)².</summary>
    internal static double SlackOf(double partOfBay) => 8 * partOfBay * partOfBay / 3;

    // Where a rising function passes zero, between nothing and the bay.
    private static double Root(Func<double, double> rising, double baySpanM)
    {
        (double low, double high) = (0, baySpanM);
        for (int halving = 0; halving < Halvings; halving++)
        {
            double middle = (low + high) / 2;
            if (rising(middle) < 0) low = middle;
            else high = middle;
        }
        return high;
    }
}
