namespace Hoopwright.Weather;

/// <summary>Bytes that were already read from a stream, and then the rest of it.</summary>
internal sealed class HeadStream(ReadOnlyMemory<byte> head, Stream rest) : Stream
{
    private int _taken;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (_taken == head.Length) return rest.Read(buffer, offset, count);
        int step = Math.Min(count, head.Length - _taken);
        head.Span.Slice(_taken, step).CopyTo(buffer.AsSpan(offset));
        _taken += step;
        return step;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
