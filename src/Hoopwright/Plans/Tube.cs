using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A tube by its size.</summary>
public sealed record Tube : PlanSection
{
    /// <summary>Outside diameter, or outside width of a square tube.</summary>
    [Description("Outside diameter, or outside width of a square tube.")]
    public Written<Length>? Outside { get; init; }

    /// <summary>Wall thickness, as a length or as a tube gauge such as 14 ga.</summary>
    [Description("Wall thickness, as a length or as a tube gauge such as 14 ga.")]
    public Written<Length>? Wall { get; init; }

    /// <summary>round or square.</summary>
    [Description("round or square.")]
    public TubeForm? Form { get; init; }

    /// <summary>galvanized steel or pvc.</summary>
    [Description("galvanized steel or pvc.")]
    public TubeMaterial? Material { get; init; }

    /// <summary>Yield strength of the steel, from the mill certificate or the maker: 50 ksi, 345 MPa.</summary>
    [Description("Yield strength of the steel, from the mill certificate or the maker: 50 ksi, 345 MPa.")]
    public Written<Pressure>? Yield { get; init; }

    /// <summary>The lengths it is sold in.</summary>
    [Description("The lengths it is sold in.")]
    public ImmutableArray<Written<Length>> StockLengths { get; init; } = [];
}
