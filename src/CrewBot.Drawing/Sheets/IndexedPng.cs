using System.Buffers.Binary;
using System.IO.Compression;
using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace CrewBot.Drawing.Sheets;

/// <summary>
/// Packs pixels as a PNG file of one byte a pixel: a third of the size of three, which counts on one bar of signal. The
/// encoder at hand writes no palettes.
/// </summary>
/// <remarks>Portable Network Graphics (PNG) Specification, Third Edition, W3C 2025: sections 5 (chunks) and 11 (IHDR, PLTE, IDAT).</remarks>
internal static class IndexedPng
{
    // A sheet has some ten inks; the rest are the smoothed edges between two of them.
    private const int MostColours = 64;
    private const byte BitsAPixel = 8;
    private const byte Indexed = 3;

    private static readonly byte[] Signature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>Packs opaque pixels, row by row, red in the lowest byte.</summary>
    public static byte[] Pack(ReadOnlySpan<uint> pixels, int width, int height)
    {
        var counts = CountsOf(pixels);
        var palette = counts
            .OrderByDescending(colour => colour.Value).ThenBy(colour => colour.Key)
            .Take(MostColours).Select(colour => colour.Key).ToArray();
        var places = counts.Keys.ToDictionary(colour => colour, colour => (byte)NearestTo(colour, palette));

        using var file = new MemoryStream();
        file.Write(Signature);
        WriteChunk(file, "IHDR"u8, Header(width, height));
        WriteChunk(file, "PLTE"u8, [.. palette.SelectMany(colour => new[] { (byte)colour, (byte)(colour >> 8), (byte)(colour >> 16) })]);
        WriteChunk(file, "IDAT"u8, Packed(pixels, width, places));
        WriteChunk(file, "IEND"u8, []);
        return file.ToArray();
    }

    private static Dictionary<uint, int> CountsOf(ReadOnlySpan<uint> pixels)
    {
        var counts = new Dictionary<uint, int>();
        for (var start = 0; start < pixels.Length;)
        {
            // Most of a sheet is one colour for long: runs are counted, not pixels.
            var colour = pixels[start];
            var run = pixels[start..].IndexOfAnyExcept(colour);
            run = run < 0 ? pixels.Length - start : run;
            CollectionsMarshal.GetValueRefOrAddDefault(counts, colour, out _) += run;
            start += run;
        }

        return counts;
    }

    private static int NearestTo(uint colour, uint[] palette)
    {
        var (nearest, least) = (0, int.MaxValue);
        for (var place = 0; place < palette.Length && least > 0; place++)
        {
            var distance = Square(colour, palette[place], 0) + Square(colour, palette[place], 8) + Square(colour, palette[place], 16);
            if (distance < least)
            {
                (nearest, least) = (place, distance);
            }
        }

        return nearest;
    }

    private static int Square(uint one, uint other, int channel)
    {
        var difference = (byte)(one >> channel) - (byte)(other >> channel);
        return difference * difference;
    }

    private static byte[] Header(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (BitsAPixel, Indexed);
        return header;
    }

    private static byte[] Packed(ReadOnlySpan<uint> pixels, int width, Dictionary<uint, byte> places)
    {
        using var packed = new MemoryStream();
        using (var packing = new ZLibStream(packed, CompressionLevel.Optimal))
        {
            var row = new byte[width + 1]; // the first byte says that the row is not filtered
            var (last, place) = (pixels[0], places[pixels[0]]);
            for (var at = 0; at < pixels.Length; at++)
            {
                if (pixels[at] != last)
                {
                    (last, place) = (pixels[at], places[pixels[at]]);
                }

                row[(at % width) + 1] = place;
                if (at % width == width - 1)
                {
                    packing.Write(row);
                }
            }
        }

        return packed.ToArray();
    }

    private static void WriteChunk(MemoryStream file, ReadOnlySpan<byte> type, ReadOnlySpan<byte> content)
    {
        Span<byte> number = stackalloc byte[sizeof(uint)];
        BinaryPrimitives.WriteInt32BigEndian(number, content.Length);
        file.Write(number);
        file.Write(type);
        file.Write(content);
        var check = new Crc32();
        check.Append(type);
        check.Append(content);
        BinaryPrimitives.WriteUInt32BigEndian(number, check.GetCurrentHashAsUInt32());
        file.Write(number);
    }
}
