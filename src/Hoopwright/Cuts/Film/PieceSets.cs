namespace Hoopwright.Cuts.Film;

/// <summary>
/// Every set of pieces that can be picked from so many of each size, numbered in mixed radix, so that the number of a set
/// less the number of a part of it is the number of the rest.
/// </summary>
internal sealed class PieceSets
{
    private readonly int[] counts;
    private readonly int[] places;

    internal PieceSets(int[] counts)
    {
        this.counts = counts;
        places = new int[counts.Length];
        int place = 1;
        for (int size = counts.Length - 1; size >= 0; size--)
        {
            places[size] = place;
            place *= counts[size] + 1;
        }
        Count = place;
    }

    /// <summary>How many sets there are, the empty one (number 0) included.</summary>
    internal int Count { get; }

    /// <summary>The set of everything.</summary>
    internal int Everything => Count - 1;

    /// <summary>How many pairs of a set and a part of it there are: the work of one pass of the search.</summary>
    internal static double PairsOf(IEnumerable<int> counts) =>
        counts.Aggregate(1.0, (pairs, count) => pairs * (count + 1) * (count + 2) / 2);

    /// <summary>How many pieces of a size a set holds.</summary>
    internal int CountOf(int set, int size) => set / places[size] % (counts[size] + 1);

    /// <summary>The first size that a set holds; the set must not be empty.</summary>
    internal int FirstSize(int set)
    {
        int size = 0;
        while (CountOf(set, size) == 0) size++;
        return size;
    }

    /// <summary>The set of one piece of a size.</summary>
    internal int One(int size) => places[size];

    /// <summary>Every part of a set, the empty one and itself included, in rising order.</summary>
    internal PartEnumerator PartsOf(int set) => new(this, set);

    /// <summary>Counts through the parts of a set as an odometer does; a struct, since this is the inner loop.</summary>
    internal ref struct PartEnumerator
    {
        private readonly PieceSets sets;
        private readonly int set;
        private int part;

        internal PartEnumerator(PieceSets sets, int set)
        {
            this.sets = sets;
            this.set = set;
            part = -1;
        }

        public readonly int Current => part;

        public readonly PartEnumerator GetEnumerator() => this;

        public bool MoveNext()
        {
            if (part < 0)
            {
                part = 0;
                return true;
            }
            for (int size = sets.counts.Length - 1; size >= 0; size--)
            {
                int has = sets.CountOf(part, size);
                if (has < sets.CountOf(set, size))
                {
                    part += sets.places[size];
                    return true;
                }
                part -= has * sets.places[size];
            }
            return false;
        }
    }
}
