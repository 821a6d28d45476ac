using System.Reflection;
using SkiaSharp;

namespace CrewBot.Drawing.Fonts;

/// <summary>Takes typefaces out of the assembly that carries the Inter family, without the framework it was packed for.</summary>
/// <remarks>
/// The assembly holds one resource: the length of an index, its version, how many files, then name, offset and size of
/// each, and after the index the files themselves. A machine that draws needs no font of its own.
/// </remarks>
internal static class FontFile
{
    private const string Carrier = "Inter";
    private const string Resource = "!AvaloniaResources";
    private const int KnownVersion = 2;

    private static readonly Assembly Carried = LoadCarrier();

    /// <summary>Opens one typeface.</summary>
    /// <param name="name">The file's name, such as <c>Inter-Regular.ttf</c>.</param>
    /// <exception cref="InvalidDataException">The carrier is not packed as expected.</exception>
    public static SKTypeface Open(string name)
    {
        using var packed = Carried.GetManifestResourceStream(Resource)
            ?? throw new InvalidDataException($"{Carrier} carries no fonts.");
        using var reader = new BinaryReader(packed);
        var start = sizeof(int) + reader.ReadInt32();
        if (reader.ReadInt32() != KnownVersion)
        {
            throw new InvalidDataException($"{Carrier} packs its fonts in a way that is not known.");
        }

        for (var files = reader.ReadInt32(); files > 0; files--)
        {
            var path = reader.ReadString();
            var (offset, size) = (reader.ReadInt32(), reader.ReadInt32());
            if (path.EndsWith($"/{name}", StringComparison.Ordinal))
            {
                packed.Position = start + offset;
                using var data = SKData.CreateCopy(reader.ReadBytes(size));
                return SKTypeface.FromData(data);
            }
        }

        throw new InvalidDataException($"{Carrier} carries no {name}.");
    }

    // Only its resource is looked at; none of its code runs.
    private static Assembly LoadCarrier()
    {
        using var stream = typeof(FontFile).Assembly.GetManifestResourceStream(Carrier)!;
        using var bytes = new MemoryStream((int)stream.Length);
        stream.CopyTo(bytes);
        return Assembly.Load(bytes.GetBuffer());
    }
}
