using SharpFuzz.Common;

namespace Hoopwright.Fuzz;

/// <summary>Which ways through the code were gone: counts by the instrumented domain into shared memory, as AFL counts them.</summary>
internal sealed unsafe class Coverage : IDisposable
{
    private const int Size = 1 << 16;
    private readonly byte* counts = (byte*)System.Runtime.InteropServices.NativeMemory.AllocZeroed(Size);
    private readonly byte[] seen = new byte[Size];

    /// <summary>Begins to count.</summary>
    public Coverage() => Trace.SharedMem = counts;

    /// <summary>How many ways were gone so far.</summary>
    public int Ways => seen.Count(each => each != 0);

    /// <summary>True when a way was gone that was not gone before, or one more often than ever by a power of two; counting begins anew.</summary>
    public bool IsNew()
    {
        bool isNew = false;
        for (int way = 0; way < Size; way++)
        {
            if (counts[way] == 0) continue;
            byte size = (byte)(1 << System.Numerics.BitOperations.Log2(counts[way]));
            if ((seen[way] & size) == 0) (seen[way], isNew) = ((byte)(seen[way] | size), true);
            counts[way] = 0;
        }
        Trace.PrevLocation = 0;
        return isNew;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Trace.SharedMem = null;
        System.Runtime.InteropServices.NativeMemory.Free(counts);
    }
}
