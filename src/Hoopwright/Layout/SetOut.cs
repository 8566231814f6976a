using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// What is needed to set the tunnel out on the ground. The strings run along the outside of the ground posts and across
/// the middle of the two end bows; they cross at the four corners.
/// </summary>
public sealed record SetOut
{
    /// <summary>String to string across.</summary>
    public required Length Across { get; init; }

    /// <summary>String to string along.</summary>
    public required Length Along { get; init; }

    /// <summary>Corner to corner across both; both diagonals are alike when it is square.</summary>
    public required Length Diagonal { get; init; }

    /// <summary>The largest 3-4-5 triangle that fits the tunnel and the room about it.</summary>
    public required SquareTriangle Triangle { get; init; }

    /// <summary>Tops of batter boards, outside the corners.</summary>
    public required ImmutableArray<BatterBoard> BatterBoards { get; init; }

    /// <summary>Marks for the ground posts or bow feet along each side string, from the front corner.</summary>
    public required ImmutableArray<RunningMark> SideMarks { get; init; }

    /// <summary>Marks for the posts of the front end along its string, from the left corner.</summary>
    public required ImmutableArray<RunningMark> FrontMarks { get; init; }

    /// <summary>Marks for the posts of the back end along its string, from the left corner.</summary>
    public required ImmutableArray<RunningMark> BackMarks { get; init; }

    /// <summary>Highest ground less lowest ground over the four corners.</summary>
    public required Length GroundFall { get; init; }
}

/// <summary>One mark of a tape laid once from one end.</summary>
/// <param name="For">What stands there: the id of a post or the number of a bow.</param>
/// <param name="Mark">Distance from the start of the tape; exact.</param>
public sealed record RunningMark(string For, Length Mark);

/// <summary>A right-angled triangle for squaring a corner.</summary>
/// <param name="Across">Leg along the short string.</param>
/// <param name="Along">Leg along the long string.</param>
/// <param name="Diagonal">The long side.</param>
public sealed record SquareTriangle(Length Across, Length Along, Length Diagonal);

/// <summary>A batter board outside a corner; a string crosses its top.</summary>
/// <param name="Id">Its name.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="StringAt">Where the string crosses it.</param>
public sealed record BatterBoard(string Id, TunnelPoint From, TunnelPoint To, TunnelPoint StringAt);
