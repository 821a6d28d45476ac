using CrewBot.Chat.Commands;

namespace CrewBot.Discord;

/// <summary>What the room needs to know before it opens.</summary>
public sealed record DiscordOptions
{
    public required BotToken Token { get; init; }

    /// <summary>Base address of the HTTP API with its version; a compatible server or a stand-in is put here.</summary>
    public Uri ApiBaseAddress { get; init; } = new("https://discord.com/api/v10/");

    /// <summary>How many shards there are in all; without it the gateway's advice is followed.</summary>
    public int? ShardCount { get; init; }

    /// <summary>Which of the shards run in this process; without it, all of them.</summary>
    public IReadOnlyList<int>? ShardIds { get; init; }

    /// <summary>Registers the commands in this one guild alone, where they show at once: for a test crew.</summary>
    public string? TestGuildId { get; init; }

    /// <summary>Where sessions are put by between a clean end and the next start; null to put none by.</summary>
    public string? SessionFile { get; init; }

    /// <summary>What units callers speak in where neither they nor their crew have set any; null to go by their language.</summary>
    public CrewUnits? Units { get; init; }
}
