namespace Hoopwright.Sheets.Models;

/// <summary>What a part of the model is made of.</summary>
internal enum Material
{
    /// <summary>Zinc-coated steel.</summary>
    Steel,

    /// <summary>Plastic pipe.</summary>
    Plastic,

    /// <summary>Wood.</summary>
    Lumber,

    /// <summary>Film; one sees through it.</summary>
    Film,

    /// <summary>Rigid sheet.</summary>
    Sheet,

    /// <summary>Concrete.</summary>
    Concrete,

    /// <summary>The ground.</summary>
    Earth,
}
