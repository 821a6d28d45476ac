namespace CrewBot.Chat.Commands;

/// <summary>A message of the chat that a command was called on.</summary>
/// <param name="Text">What it says; may be empty.</param>
/// <param name="Author">Who wrote it.</param>
/// <param name="AuthorName">What they are called.</param>
/// <param name="SentAt">When it was sent.</param>
public sealed record ChatMessage(string Text, Person Author, string AuthorName, DateTimeOffset SentAt)
{
    /// <summary>Where it stands; null when the platform has no links.</summary>
    public Uri? Link { get; init; }

    /// <summary>The first picture in it.</summary>
    public Attachment? Photo { get; init; }
}
