using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Arraywright.Cli.Tests;

/// <summary>A PNG read by its published format (W3C, Portable Network Graphics), enough for eight bits a channel and no interlacing.</summary>
internal sealed class PngReading
{
    private readonly byte[] _pixels;
    private readonly int _channels;

    public PngReading(byte[] file)
    {
        Assert.Equal([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], file[..8]);
        using MemoryStream packed = new();
        for (int at = 8; at < file.Length;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(at));
            ReadOnlySpan<byte> data = file.AsSpan(at + 8, length);
            switch (Encoding.ASCII.GetString(file, at + 4, 4))
            {
                case "IHDR":
                    Width = BinaryPrimitives.ReadInt32BigEndian(data);
                    Height = BinaryPrimitives.ReadInt32BigEndian(data[4..]);
                    Assert.Equal((8, 0), (data[8], data[12]));
                    _channels = data[9] switch { 2 => 3, 6 => 4, _ => throw new NotSupportedException($"colour type {data[9]}") };
                    break;
                case "IDAT":
                    packed.Write(data);
                    break;
            }

            at += length + 12;
        }

        packed.Position = 0;
        using ZLibStream inflated = new(packed, CompressionMode.Decompress);
        using MemoryStream raw = new();
        inflated.CopyTo(raw);
        _pixels = Unfilter(raw.ToArray());
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Mean of red, green and blue, 0 to 255.</summary>
    public int Lightness(int x, int y)
    {
        int at = ((y * Width) + x) * _channels;
        return (_pixels[at] + _pixels[at + 1] + _pixels[at + 2]) / 3;
    }

    private byte[] Unfilter(byte[] raw)
    {
        int stride = Width * _channels;
        Assert.Equal(Height * (stride + 1), raw.Length);
        byte[] pixels = new byte[Height * stride];
        for (int row = 0; row < Height; row++)
        {
            for (int i = 0; i < stride; i++)
            {
                int at = (row * stride) + i;
                int left = i < _channels ? 0 : pixels[at - _channels];
                int up = row == 0 ? 0 : pixels[at - stride];
                int corner = row == 0 || i < _channels ? 0 : pixels[at - stride - _channels];
                int expected = raw[row * (stride + 1)] switch { 0 => 0, 1 => left, 2 => up, 3 => (left + up) / 2, _ => Paeth(left, up, corner) };
                pixels[at] = (byte)(raw[(row * (stride + 1)) + 1 + i] + expected);
            }
        }

        return pixels;
    }

    private static int Paeth(int left, int up, int corner)
    {
        int guess = left + up - corner;
        (int l, int u, int c) = (Math.Abs(guess - left), Math.Abs(guess - up), Math.Abs(guess - corner));
        return l <= u && l <= c ? left : u <= c ? up : corner;
    }
}
