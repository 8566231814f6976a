using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>A length to be cut from stock, or a run to be joined from several such lengths.</summary>
/// <param name="MemberId">The member or run it is for.</param>
/// <param name="Label">What to write on it.</param>
/// <param name="Length">Length to cut, rounded for the tape.</param>
public sealed record PieceNeed(string MemberId, string Label, Length Length)
{
    /// <summary>The length before it was rounded. Stock is chosen by it, so that the same order comes out whichever tape is used.</summary>
    public Length Exact { get; init; } = Length;

    /// <summary>A length cut to the nearest mark of a tape.</summary>
    /// <param name="id">The member or run; also what to write on it.</param>
    /// <param name="exact">Its exact length.</param>
    /// <param name="units">The tape.</param>
    internal static PieceNeed Of(string id, Length exact, UnitSystem units) => new(id, id, TapeText.RoundForMember(exact, units)) { Exact = exact };

    /// <summary>Where it goes, in words.</summary>
    public string Place { get; init; } = "";

    /// <summary>How it may be joined from several pieces; null when it must be one.</summary>
    public Joining? Joining { get; init; }
}
