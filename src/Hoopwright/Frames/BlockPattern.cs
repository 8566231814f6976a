namespace Hoopwright.Frames;

/// <summary>
/// Where the six-by-six blocks of a factored stiffness matrix stand: an order of elimination that keeps them few, and what each
/// column fills. Made once for a frame's connections, used for every matrix with the same ones.
/// </summary>
/// <remarks>
/// Order by least degree (Tinney scheme 2): a bow is a chain between its purlins, so its inner nodes go first and leave almost no
/// fill. Ties go to the lower node number, so the order is always the same.
/// </remarks>
internal sealed class BlockPattern
{
    // A row of two hundred bows needs some hundred thousand of each; these take about a gigabyte and half a minute.
    private const int MostBlocks = 3_000_000;
    private const int MostUpdates = 50_000_000;

    private BlockPattern(int[] place, int[] starts, int[] rows)
    {
        Place = place;
        Order = new int[place.Length];
        for (int node = 0; node < place.Length; node++)
            Order[place[node]] = node;
        Starts = starts;
        Rows = rows;
        UpdateStarts = new int[place.Length + 1];
        Targets = FindTargets();
    }

    /// <summary>Nodes.</summary>
    internal int Nodes => Place.Length;

    /// <summary>Blocks, diagonal ones included.</summary>
    internal int Blocks => Rows.Length;

    /// <summary>The column that each node became.</summary>
    internal int[] Place { get; }

    /// <summary>The node that each column stands for.</summary>
    internal int[] Order { get; }

    /// <summary>Where each column's blocks start; its first block is the diagonal one.</summary>
    internal int[] Starts { get; }

    /// <summary>The row of each block; rising within a column.</summary>
    internal int[] Rows { get; }

    /// <summary>For each column, where its pairs of off-diagonal blocks start in <see cref="Targets"/>.</summary>
    internal int[] UpdateStarts { get; }

    /// <summary>For each pair (i ≥ j) of a column's off-diagonal blocks, the block (i, j) that they change.</summary>
    internal int[] Targets { get; }

    /// <summary>The pattern of nodes joined in pairs; null when they are joined so densely that its factors would be out of reach.</summary>
    /// <param name="nodes">How many nodes.</param>
    /// <param name="pairs">Pairs of node numbers.</param>
    internal static BlockPattern? Of(int nodes, ReadOnlySpan<(int A, int B)> pairs)
    {
        var neighbours = Neighbours(nodes, pairs);
        var place = new int[nodes];
        Array.Fill(place, -1);
        var columns = new int[nodes][];
        var queue = new PriorityQueue<int, (int Degree, int Node)>(nodes);
        for (int node = 0; node < nodes; node++)
            queue.Enqueue(node, (neighbours[node].Length, node));

        int column = 0;
        long blocks = nodes, updates = 0;
        while (queue.TryDequeue(out int node, out var key))
        {
            if (place[node] >= 0 || key.Degree != neighbours[node].Length)
                continue;
            place[node] = column;
            int[] mine = columns[column++] = neighbours[node];
            blocks += mine.Length;
            updates += (long)mine.Length * (mine.Length + 1) / 2;
            if (blocks > MostBlocks || updates > MostUpdates)
                return null;
            foreach (int other in mine)
            {
                int before = neighbours[other].Length;
                neighbours[other] = Joined(neighbours[other], mine, other, node);
                if (neighbours[other].Length != before)
                    queue.Enqueue(other, (neighbours[other].Length, other));
            }
        }
        return InOrder(place, columns);
    }

    /// <summary>The block of a row and a column, both as places; the row is not before the column.</summary>
    internal int Find(int row, int column) =>
        row == column ? Starts[column] : Array.BinarySearch(Rows, Starts[column] + 1, Starts[column + 1] - Starts[column] - 1, row);

    private static int[][] Neighbours(int nodes, ReadOnlySpan<(int A, int B)> pairs)
    {
        var lists = new List<int>[nodes];
        for (int node = 0; node < nodes; node++)
            lists[node] = new(4);
        foreach (var (a, b) in pairs)
        {
            if (a == b)
                continue;
            lists[a].Add(b);
            lists[b].Add(a);
        }
        var found = new int[nodes][];
        for (int node = 0; node < nodes; node++)
        {
            lists[node].Sort();
            found[node] = [.. Distinct(lists[node])];
        }
        return found;
    }

    private static IEnumerable<int> Distinct(List<int> sorted)
    {
        for (int at = 0; at < sorted.Count; at++)
        {
            if (at == 0 || sorted[at] != sorted[at - 1])
                yield return sorted[at];
        }
    }

    /// <summary>Two rising lists as one, without two of their members.</summary>
    private static int[] Joined(int[] one, int[] two, int without, int orWithout)
    {
        Span<int> joined = one.Length + two.Length <= 256 ? stackalloc int[256] : new int[one.Length + two.Length];
        int count = 0, a = 0, b = 0;
        while (a < one.Length || b < two.Length)
        {
            int next = b >= two.Length || (a < one.Length && one[a] <= two[b]) ? one[a] : two[b];
            if (a < one.Length && one[a] == next)
                a++;
            if (b < two.Length && two[b] == next)
                b++;
            if (next != without && next != orWithout)
                joined[count++] = next;
        }
        return joined[..count].ToArray();
    }

    private static BlockPattern InOrder(int[] place, int[][] columns)
    {
        var starts = new int[columns.Length + 1];
        for (int column = 0; column < columns.Length; column++)
            starts[column + 1] = starts[column] + columns[column].Length + 1;
        var rows = new int[starts[^1]];
        for (int column = 0; column < columns.Length; column++)
        {
            int at = starts[column];
            rows[at++] = column;
            foreach (int node in columns[column])
                rows[at++] = place[node];
            Array.Sort(rows, starts[column] + 1, columns[column].Length);
        }
        return new(place, starts, rows);
    }

    private int[] FindTargets()
    {
        for (int column = 0; column < Nodes; column++)
        {
            int below = Starts[column + 1] - Starts[column] - 1;
            UpdateStarts[column + 1] = checked(UpdateStarts[column] + (below * (below + 1) / 2));
        }
        var targets = new int[UpdateStarts[^1]];
        int next = 0;
        for (int column = 0; column < Nodes; column++)
        {
            int first = Starts[column] + 1, end = Starts[column + 1];
            for (int second = first; second < end; second++)
            {
                int at = Starts[Rows[second]];
                for (int block = second; block < end; block++)
                {
                    while (Rows[at] != Rows[block])
                        at++;
                    targets[next++] = at;
                }
            }
        }
        return targets;
    }
}
