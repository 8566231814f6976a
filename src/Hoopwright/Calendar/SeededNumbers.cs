namespace Hoopwright.Calendar;

/// <summary>
/// Numbers that look drawn by lot and are the same for the same seed everywhere: SplitMix64 (Steele, Lea, Flood, Fast splittable pseudorandom
/// number generators, OOPSLA 2014; constants from memory, held in tests to its published first numbers).
/// </summary>
internal sealed class SeededNumbers(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next number of 64 bits.</summary>
    internal ulong Next()
    {
        ulong value = _state += 0x9E3779B97F4A7C15;
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
        return value ^ (value >> 31);
    }

    /// <summary>From 0 to less than 1.</summary>
    internal double Unit() => (Next() >> 11) / (double)(1L << 53);

    /// <summary>From 0 to less than a count.</summary>
    internal int Below(int count) => (int)(Unit() * count);

    /// <summary>Drawn from a triangle: none below the least or above the most, most often near the likely one.</summary>
    internal double Triangle(double least, double likely, double most)
    {
        double part = Unit(), width = most - least;
        if (width <= 0) return likely;
        double rise = (likely - least) / width;
        return part < rise ? least + Math.Sqrt(part * width * (likely - least)) : most - Math.Sqrt((1 - part) * width * (most - likely));
    }
}
