using System.Globalization;

namespace CrewBot.Chat.Commands;

/// <summary>A command's place in the menu of a message: which of its options take what from the message.</summary>
/// <param name="Label">As the menu shows it, in at most 32 characters.</param>
public sealed record MessageMenu(string Label)
{
    /// <summary>Takes what the message says; for a command with a shorthand usually the option of its words.</summary>
    public CommandOption? Text { get; init; }

    /// <summary>Takes who wrote it: a person where the option is one, otherwise their name.</summary>
    public CommandOption? Author { get; init; }

    /// <summary>Takes when it was sent, as <c>2027-01-16T20:05:00Z</c>.</summary>
    public CommandOption? SentAt { get; init; }

    /// <summary>Takes where it stands.</summary>
    public CommandOption? Link { get; init; }

    /// <summary>Takes its first picture.</summary>
    public CommandOption? Photo { get; init; }

    /// <summary>
    /// What a form asks for, filled in as far as the message says it, when the message lacks what the command needs; at most
    /// <see cref="ReplyAction.MostFields"/>.
    /// </summary>
    public IReadOnlyList<CommandOption> Fields { get; init; } = [];

    /// <summary>
    /// Whether the form that the answer offers opens at once, so that a person corrects and sends what was read out of somebody
    /// else's message; an answer without a form is shown as it is.
    /// </summary>
    public bool OpensForm { get; init; }

    /// <summary>What the message says, as an option.</summary>
    public Dictionary<string, string> SaidIn(ChatMessage message) =>
        Text is not null && message.Text.Trim() is { Length: > 0 } text ? new() { [Text.Name] = text } : [];

    /// <summary>What stands around the message: it gives way to what the message says.</summary>
    public Dictionary<string, string> GivenBy(ChatMessage message)
    {
        (CommandOption? Option, string? Text)[] given =
        [
            (Author, Author?.Kind is OptionKind.Person ? message.Author.Text : message.AuthorName),
            (SentAt, message.SentAt.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture)),
            (Link, message.Link?.AbsoluteUri),
            (Photo, message.Photo?.Text),
        ];
        return given
            .Where(part => part.Option is not null && !string.IsNullOrEmpty(part.Text))
            .ToDictionary(part => part.Option!.Name, part => part.Text!);
    }
}
