using Hoopwright.Sources;

namespace Hoopwright.Cover.Pull;

/// <summary>What film is made of: low-density polyethylene. Whatever weighs film, pulls it or lets it hang takes these.</summary>
internal static class FilmMaterial
{
    /// <summary>Density, kg/m³: within the published 912 to 925.</summary>
    internal const double KgM3 = 920;

    /// <summary>E in a gust at 23 °C, Pa.</summary>
    internal const double YoungPa = 200e6;

    /// <summary>Expansion, 1/K.</summary>
    internal const double PerK = 2e-4;

    /// <summary>Poisson's ratio.</summary>
    internal const double Poisson = 0.45;

    /// <summary>A membrane, or a cable, in equilibrium.</summary>
    internal static readonly Citation Membrane = new("equilibrium of a cylindrical membrane", "", Standing.Derived);

    internal static readonly Formula Density = new("ρ", "920, low-density polyethylene", "kg/m³", new Citation("Materials Handbook, as cited by matmake.com", "LDPE, 912 to 925 kg/m³", Standing.Published));

    internal static readonly Formula Stiffness = new("E", "2·10⁸, low-density polyethylene in short loads", "Pa", new Citation("material tables, designerdata.nl", "LDPE, 200 to 300 MPa", Standing.Published));

    internal static readonly Formula Expansion = new("α", "0.0002, low-density polyethylene", "1/K", new Citation("Materials Handbook, as cited by matmake.com", "LDPE, 1 to 2·10⁻⁴", Standing.Published));
}
