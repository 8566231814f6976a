namespace Hoopwright.Strength.Loads;

/// <summary>What a load comes from.</summary>
public enum LoadKind
{
    /// <summary>The weight of the tunnel.</summary>
    Dead,

    /// <summary>Crops hung from the frame.</summary>
    Crop,

    /// <summary>Snow.</summary>
    Snow,

    /// <summary>Wind on the covered tunnel.</summary>
    Wind,

    /// <summary>Cold and heat.</summary>
    Temperature,

    /// <summary>A person on a ladder.</summary>
    Person,

    /// <summary>Wind while it is being built: the bare frame, or ends without a roof.</summary>
    Construction,
}
