using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;
using Attachment = CrewBot.Chat.Commands.Attachment;

namespace CrewBot.Discord.Mapping;

/// <summary>Reads a message that a menu was opened on, and the files that come with interactions.</summary>
internal static class MessageReader
{
    private const string DirectMessages = "@me";

    public static ChatMessage Read(Message message, Snowflake id, Interaction interaction)
    {
        var place = interaction.GuildId?.ToString() ?? DirectMessages;
        var channel = message.ChannelId ?? interaction.ChannelId;
        return new ChatMessage(
            message.Content ?? "",
            new Person(message.Author?.Id?.ToString() ?? ""),
            message.Author is { } author ? CallerReader.NameOf(null, author) : "",
            message.Timestamp ?? id.CreatedAt)
        {
            Link = new Uri($"https://discord.com/channels/{place}/{channel}/{id}"),
            Photo = PhotoOf(message),
        };
    }

    /// <summary>Its first picture; null for none.</summary>
    public static Attachment? PhotoOf(Message message) => (message.Attachments ?? [])
        .Where(file => file.ContentType?.StartsWith("image/", StringComparison.Ordinal) is true)
        .Select(file => Of(file))
        .FirstOrDefault();

    /// <summary>A file in Chat's words; null when the platform gave no address for it.</summary>
    public static Attachment? Of(Wire.Attachment file) => Uri.TryCreate(file.Url, UriKind.Absolute, out var address)
        ? new Attachment(address, file.Filename ?? address.Segments[^1]) { Id = file.Id?.ToString(), ContentType = file.ContentType, Size = file.Size }
        : null;
}
