using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
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

    private static readonly byte[] Packed = ReadPacked();

    /// <summary>Opens one typeface.</summary>
    /// <param name="name">The file's name, such as <c>Inter-Regular.ttf</c>.</param>
    /// <exception cref="InvalidDataException">The carrier is not packed as expected.</exception>
    public static SKTypeface Open(string name)
    {
        using var packed = new MemoryStream(Packed);
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

    // None of its code is loaded: the resource is found in the file's own tables.
    private static byte[] ReadPacked()
    {
        using var stream = typeof(FontFile).Assembly.GetManifestResourceStream(Carrier)!;
        using var carrier = new PEReader(stream);
        var tables = carrier.GetMetadataReader();
        var found = tables.ManifestResources.Select(tables.GetManifestResource).FirstOrDefault(one => tables.StringComparer.Equals(one.Name, Resource));
        if (found.Name.IsNil)
        {
            throw new InvalidDataException($"{Carrier} carries no fonts.");
        }

        var resources = carrier.GetSectionData(carrier.PEHeaders.CorHeader!.ResourcesDirectory.RelativeVirtualAddress);
        var reader = resources.GetReader((int)found.Offset, resources.Length - (int)found.Offset);
        return reader.ReadBytes(reader.ReadInt32());
    }
}
