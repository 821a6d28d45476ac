using System.Text.Json.Serialization;

namespace CrewBot.Chat.Commands;

/// <summary>A file that comes with a reply: attached on a platform, written to a folder by a terminal.</summary>
/// <param name="Name">Lower-case ASCII with its ending, such as <c>catches-2027-01-16.csv</c>; never a path.</param>
/// <param name="ContentType">Its media type, such as <c>text/csv</c>.</param>
/// <param name="Content">The bytes; base64 in <c>--json</c>.</param>
public sealed record ReplyFile(string Name, string ContentType, ReadOnlyMemory<byte> Content)
{
    /// <summary>For a picture, what it shows; null for other files.</summary>
    public string? AlternativeText { get; init; }

    /// <summary>It is a picture.</summary>
    [JsonIgnore]
    public bool IsPicture => AlternativeText is not null;
}
