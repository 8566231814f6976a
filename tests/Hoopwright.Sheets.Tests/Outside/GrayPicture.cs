using System.Buffers.Binary;
using System.IO.Compression;

namespace Hoopwright.Sheets.Tests.Outside;

/// <summary>A picture in grey, from 0 for black to 255 for white. Reads PNG of eight bits, not interlaced, grey or in colours (ISO/IEC 15948).</summary>
internal sealed class GrayPicture
{
    private readonly byte[] pixels;

    private GrayPicture(int width, int height, byte[] pixels) => (Width, Height, this.pixels) = (width, height, pixels);

    internal int Width { get; }

    internal int Height { get; }

    internal byte this[int x, int y] => pixels[(y * Width) + x];

    internal static GrayPicture OfPng(byte[] png)
    {
        int width = 0, height = 0, channels = 0;
        using MemoryStream packed = new();
        for (int at = 8; at < png.Length;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            string kind = System.Text.Encoding.ASCII.GetString(png, at + 4, 4);
            ReadOnlySpan<byte> data = png.AsSpan(at + 8, length);
            if (kind == "IHDR")
            {
                (width, height) = (BinaryPrimitives.ReadInt32BigEndian(data), BinaryPrimitives.ReadInt32BigEndian(data[4..]));
                Assert.Equal((8, 0), (data[8], data[12]));
                channels = data[9] switch { 0 => 1, 2 => 3, 6 => 4, _ => throw new NotSupportedException($"colour type {data[9]}") };
            }
            else if (kind == "IDAT")
            {
                packed.Write(data);
            }
            at += length + 12;
        }
        packed.Position = 0;
        using ZLibStream zip = new(packed, CompressionMode.Decompress);
        byte[] row = new byte[width * channels], above = new byte[width * channels], pixels = new byte[width * height];
        for (int y = 0; y < height; y++)
        {
            int filter = zip.ReadByte();
            zip.ReadExactly(row);
            for (int at = 0; at < row.Length; at++)
            {
                int left = at >= channels ? row[at - channels] : 0, up = above[at], corner = at >= channels ? above[at - channels] : 0;
                row[at] += (byte)(filter switch { 0 => 0, 1 => left, 2 => up, 3 => (left + up) / 2, 4 => Paeth(left, up, corner), _ => throw new NotSupportedException($"filter {filter}") });
            }
            for (int x = 0; x < width; x++) pixels[(y * width) + x] = channels == 1 ? row[x] : (byte)(((row[x * channels] * 30) + (row[(x * channels) + 1] * 59) + (row[(x * channels) + 2] * 11)) / 100);
            (row, above) = (above, row);
        }
        return new GrayPicture(width, height, pixels);
    }

    /// <summary>So many rows of it, from one on.</summary>
    internal GrayPicture Rows(int from, int count) => new(Width, count, pixels[(from * Width)..((from + count) * Width)]);

    /// <summary>The part of places whose darkness, taken over a square of so many to each side, differs by more than so much of 255.</summary>
    internal double DiffersFrom(GrayPicture other, int reach, double by)
    {
        int width = Math.Min(Width, other.Width), height = Math.Min(Height, other.Height), places = 0, differing = 0;
        for (int y = reach; y < height - reach; y += reach)
        {
            for (int x = reach; x < width - reach; x += reach)
            {
                places++;
                if (Math.Abs(Mean(x, y, reach) - other.Mean(x, y, reach)) > by) differing++;
            }
        }
        return (double)differing / places;
    }

    private double Mean(int x, int y, int reach)
    {
        int sum = 0;
        for (int dy = -reach; dy <= reach; dy++)
        {
            for (int dx = -reach; dx <= reach; dx++) sum += this[x + dx, y + dy];
        }
        return sum / (double)(((2 * reach) + 1) * ((2 * reach) + 1));
    }

    private static int Paeth(int left, int up, int corner)
    {
        int guess = left + up - corner, byLeft = Math.Abs(guess - left), byUp = Math.Abs(guess - up), byCorner = Math.Abs(guess - corner);
        return byLeft <= byUp && byLeft <= byCorner ? left : byUp <= byCorner ? up : corner;
    }
}
