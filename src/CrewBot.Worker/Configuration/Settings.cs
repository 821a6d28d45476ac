using CrewBot.Chat.Commands;
using CrewBot.Discord;

namespace CrewBot.Worker.Configuration;

/// <summary>The configuration, checked.</summary>
internal sealed record Settings
{
    /// <summary>What units callers speak in; customary by default.</summary>
    public CrewUnits Units { get; init; } = CrewUnits.Customary;

    /// <summary>The whole path of the records that a crew lays over the built-in ones; null for none.</summary>
    public string? KnowledgeFile { get; init; }

    /// <summary>The whole path of the database; null where this user has no place for one.</summary>
    public string? Database { get; init; }

    /// <summary>The whole path of the folder in which copies of photos are kept; null for none.</summary>
    public string? PhotoFolder { get; init; }

    /// <summary>How much room those copies may take together, in megabytes.</summary>
    public int PhotoMegabytes { get; init; } = 500;

    /// <summary>How to join the crew's Discord; null without a token.</summary>
    public DiscordOptions? Discord { get; init; }
}
