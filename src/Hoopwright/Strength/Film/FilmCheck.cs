using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Film;

/// <summary>Pull in a film against the stress at which it starts to stretch for good. Tears, creases and hot tube are not in it.</summary>
internal sealed record FilmCheck : ICheck
{
    internal static readonly Formula Stress = new("σ", "T/t", "Pa", Register.Mechanics.At("stress of a thin sheet", Standing.Derived));

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>T, pull for each length.</summary>
    internal required double PullNPerM { get; init; }

    /// <summary>σ.</summary>
    internal required double StressPa { get; init; }

    /// <summary>The stress it was held against.</summary>
    internal required double LimitPa { get; init; }

    /// <summary>The formula that gave the pull.</summary>
    internal required Formula PullFormula { get; init; }

    /// <summary>Meets a pull with the lower end of a strength.</summary>
    /// <param name="pullNPerM">T, by <see cref="FilmTension"/>.</param>
    /// <param name="thicknessM">Thickness of the film; above 0.</param>
    /// <param name="strength">What it is held against; <see cref="FilmStrength.Yield"/> for film that must last.</param>
    /// <param name="pullFormula">The formula that gave the pull.</param>
    internal static FilmCheck Of(double pullNPerM, double thicknessM, FilmStrength strength, Formula pullFormula)
    {
        double stressPa = pullNPerM / thicknessM;
        return new FilmCheck { Utilisation = stressPa / strength.LeastPa, PullNPerM = pullNPerM, StressPa = stressPa, LimitPa = strength.LeastPa, PullFormula = pullFormula };
    }

    /// <inheritdoc/>
    public string Governs => "pull in the film";

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("T", PullNPerM, "N/m", "pull in the film"),
        new("σ", StressPa, "Pa", "stress in the film"),
        new("σ limit", LimitPa, "Pa", "stress it is held against"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => [PullFormula, Stress];
}
