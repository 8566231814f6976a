namespace Hoopwright.Cutting;

/// <summary>
/// The parts of a search that are still open. The part last opened is gone on with as long as it opens further ones; after
/// that, if so wanted, comes the part with the lowest bound, so that no poor part holds the search up for good.
/// </summary>
internal sealed class OpenNodes(bool lowestFirst)
{
    private readonly List<SearchNode> _nodes = [];
    private bool _goesOn = true;

    /// <summary>How many parts are open.</summary>
    public int Count => _nodes.Count;

    /// <summary>A bound on every open part; <see cref="long.MaxValue"/> when none is.</summary>
    public long Bound => _nodes.Select(node => node.Bound).DefaultIfEmpty(long.MaxValue).Min();

    /// <summary>Opens a part.</summary>
    public void Push(SearchNode node)
    {
        _nodes.Add(node);
        _goesOn = true;
    }

    /// <summary>Takes the next part out.</summary>
    public SearchNode Pop()
    {
        var at = _nodes.Count - 1;
        if (lowestFirst && !_goesOn)
        {
            // Of equal bounds the one opened last.
            for (var index = at - 1; index >= 0; index--)
            {
                if (_nodes[index].Bound < _nodes[at].Bound)
                    at = index;
            }
        }

        var node = _nodes[at];
        _nodes.RemoveAt(at);
        _goesOn = false;
        return node;
    }
}
