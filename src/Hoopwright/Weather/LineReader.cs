using System.Text;

namespace Hoopwright.Weather;

/// <summary>Reads a stream line by line with a buffer of one size, however large the stream is.</summary>
internal sealed class LineReader(Stream stream)
{
    /// <summary>No row of weather is longer; a file with longer lines is another thing.</summary>
    internal const int Longest = 1 << 16;

    private readonly byte[] _buffer = new byte[2 * Longest];
    private int _start, _end, _lineStart, _lineLength;
    private bool _done;

    /// <summary>Number of the line read last, from 1.</summary>
    internal int Number { get; private set; }

    /// <summary>True when reading stopped at a line longer than <see cref="Longest"/>.</summary>
    internal bool TooLong { get; private set; }

    /// <summary>True when the line read last had no end of line, so that the file may break off in it.</summary>
    internal bool Unfinished { get; private set; }

    /// <summary>The line read last, without its end.</summary>
    internal ReadOnlySpan<byte> Line => _buffer.AsSpan(_lineStart, _lineLength);

    /// <summary>Goes to the next line; false at the end.</summary>
    internal bool Next()
    {
        while (true)
        {
            int at = _buffer.AsSpan(_start, _end - _start).IndexOf((byte)'\n');
            if (at >= 0) return Take(at, at + 1);
            if (_end - _start > Longest)
            {
                TooLong = true;
                return false;
            }
            if (_done)
            {
                if (_end == _start) return false;
                Unfinished = true;
                return Take(_end - _start, _end - _start);
            }
            Fill();
        }
    }

    /// <summary>Text of a line: UTF-8, or Latin-1 where it is none; then <paramref name="latin"/> is true.</summary>
    internal static string Text(ReadOnlySpan<byte> line, out bool latin)
    {
        latin = !System.Text.Unicode.Utf8.IsValid(line);
        return (latin ? Encoding.Latin1 : Encoding.UTF8).GetString(line);
    }

    private bool Take(int length, int step)
    {
        Number++;
        (_lineStart, _lineLength) = (_start, length);
        _start += step;
        if (_lineLength > 0 && _buffer[_lineStart + _lineLength - 1] == (byte)'\r') _lineLength--;
        if (Number == 1 && Line.StartsWith("\uFEFF"u8)) (_lineStart, _lineLength) = (_lineStart + 3, _lineLength - 3);
        return true;
    }

    private void Fill()
    {
        if (_start > 0)
        {
            _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
            (_start, _end) = (0, _end - _start);
        }
        int read = stream.Read(_buffer, _end, _buffer.Length - _end);
        _end += read;
        _done = read == 0;
    }
}
