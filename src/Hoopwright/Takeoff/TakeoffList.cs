using System.Collections.Immutable;

namespace Hoopwright.Takeoff;

/// <summary>Everything the tunnel is made of, before it is cut from stock and rounded to packages.</summary>
/// <param name="Lines">The lines by stage, then item, then size.</param>
public sealed record TakeoffList(ImmutableArray<MaterialLine> Lines)
{
    /// <summary>
    /// The one line that a member, or another length to be cut, is made from; null when there is none of that name. Lines of
    /// screws and the like name members too, but nothing is made from them.
    /// </summary>
    public MaterialLine? MadeFrom(string memberId) =>
        Lines.SingleOrDefault(line => line.Pieces.Any(piece => piece.MemberId == memberId));

    /// <summary>The lines that name a member, run, hole or film piece.</summary>
    public ImmutableArray<MaterialLine> TracedTo(string id) => [.. Lines.Where(line => line.TraceIds.Contains(id))];

    /// <summary>The lines of one item, whatever its size and stage.</summary>
    public ImmutableArray<MaterialLine> Of(string item) => [.. Lines.Where(line => line.Item == item)];
}
