namespace Hoopwright.Plans;

/// <summary>How warm the film is kept while it snows.</summary>
public enum ThermalClass
{
    /// <summary>No heat, or open.</summary>
    Unheated,

    /// <summary>Kept just above freezing.</summary>
    AboveFreezing,

    /// <summary>Heated as a building is.</summary>
    Heated,

    /// <summary>A greenhouse heated without a break through the winter, with an attendant or an alarm, and film that lets the heat out.</summary>
    HeatedGreenhouse,
}
