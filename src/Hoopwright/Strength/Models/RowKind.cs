namespace Hoopwright.Strength.Models;

/// <summary>What a piece of the row in space is.</summary>
internal enum RowKind
{
    /// <summary>A bow between the end bows.</summary>
    Bow,

    /// <summary>The first or the last bow.</summary>
    EndBow,

    /// <summary>A tube along the tunnel.</summary>
    Purlin,

    /// <summary>A tie across a bow.</summary>
    Tie,

    /// <summary>A diagonal in a corner.</summary>
    Brace,

    /// <summary>A wood post of an end.</summary>
    EndPost,

    /// <summary>A girt between posts of an end.</summary>
    Girt,
}
