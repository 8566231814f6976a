namespace Hoopwright.Cutting;

/// <summary>An open part of a search: the rows that make it, the basis to start from, the bound it inherits.</summary>
/// <param name="Rows">Cuts and branches, in the order they were added.</param>
/// <param name="Basis">Columns of the parent's basis: pool indexes, or −1 − row for a slack.</param>
/// <param name="Bound">A bound on every plan in this part.</param>
/// <param name="Depth">How many branches deep.</param>
internal sealed record SearchNode(SearchRow[] Rows, int[] Basis, long Bound, int Depth);
