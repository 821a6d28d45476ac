using System.Globalization;

namespace CrewBot.Chat.Commands;

/// <summary>A file that came along with a request. What an option holds of it is one text: a link that says the rest behind its <c>#</c>.</summary>
/// <param name="Address">Where it can be fetched, for how long is the platform's affair; a <c>file</c> address lies on this computer.</param>
/// <param name="Name">Its file name.</param>
public sealed record Attachment(Uri Address, string Name)
{
    private const string IdKey = "id";
    private const string NameKey = "name";
    private const string TypeKey = "type";
    private const string SizeKey = "size";

    /// <summary>The platform's own reference, which outlives the address; null for a mere link.</summary>
    public string? Id { get; init; }

    /// <summary>The media type, such as <c>image/jpeg</c>, as the platform says it; null when it does not.</summary>
    public string? ContentType { get; init; }

    /// <summary>Bytes, as the platform says; null when it does not.</summary>
    public long? Size { get; init; }

    /// <summary>The text that an option holds.</summary>
    public string Text
    {
        get
        {
            (string Key, string? Value)[] parts =
            [
                (IdKey, Id), (NameKey, Id is null ? null : Name), (TypeKey, ContentType),
                (SizeKey, Size?.ToString(CultureInfo.InvariantCulture)),
            ];
            var known = parts.Where(part => part.Value is not null).Select(part => $"{part.Key}={Uri.EscapeDataString(part.Value!)}").ToList();
            var address = Address.GetComponents(UriComponents.AbsoluteUri & ~UriComponents.Fragment, UriFormat.UriEscaped);
            return known.Count > 0 ? $"{address}#{string.Join('&', known)}" : address;
        }
    }

    /// <summary>What names the file for good: the platform's addresses bear a signature that ends within a day, and go without it.</summary>
    public string Reference => Id is null
        ? Address.AbsoluteUri
        : $"{Address.GetLeftPart(UriPartial.Path)}#{IdKey}={Uri.EscapeDataString(Id)}";

    /// <summary>Reads a link, with or without what <see cref="Text"/> says behind it.</summary>
    public static Attachment Of(Uri link)
    {
        var known = link.Fragment.TrimStart('#').Split('&')
            .Select(part => part.Split('=', 2))
            .Where(part => part.Length == 2)
            .GroupBy(part => part[0], part => Uri.UnescapeDataString(part[1]))
            .ToDictionary(part => part.Key, part => part.First());
        return new Attachment(
            new UriBuilder(link) { Fragment = "" }.Uri,
            known.GetValueOrDefault(NameKey) ?? Uri.UnescapeDataString(link.Segments[^1]))
        {
            Id = known.GetValueOrDefault(IdKey),
            ContentType = known.GetValueOrDefault(TypeKey),
            Size = long.TryParse(known.GetValueOrDefault(SizeKey), NumberStyles.None, CultureInfo.InvariantCulture, out var size) ? size : null,
        };
    }
}
