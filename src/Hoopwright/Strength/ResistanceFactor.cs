namespace Hoopwright.Strength;

/// <summary>The pair of factors a standard gives for a limit state.</summary>
/// <param name="Phi">φ, for factored loads.</param>
/// <param name="Omega">Ω, for allowable strength.</param>
internal readonly record struct ResistanceFactor(double Phi, double Omega)
{
    /// <summary>What may be used of a nominal strength.</summary>
    internal double DesignOf(double nominal, DesignMethod method) => method switch
    {
        DesignMethod.Asd => nominal / Omega,
        DesignMethod.Lrfd => Phi * nominal,
    };
}
