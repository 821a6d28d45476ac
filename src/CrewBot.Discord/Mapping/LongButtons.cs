using System.Security.Cryptography;
using System.Text;
using CrewBot.Chat.Commands;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Remembers the commands that are too long for a component's id: the latest in memory, those of crews in the crew's book as
/// well. A command is known by what is in it, so a card that is shown again keeps nothing new.
/// </summary>
internal sealed class LongButtons(ButtonBook book, TimeProvider clock, ILogger<LongButtons> log)
{
    private const int MostInMemory = 2_000;
    private const int KeyBytes = 12;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, string> _kept = [];
    private readonly Queue<string> _order = [];

    /// <summary>Keeps a command in memory.</summary>
    /// <returns>What it is found by.</returns>
    public string Keep(string command)
    {
        var key = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(command)).AsSpan(0, KeyBytes));
        lock (_gate)
        {
            if (_kept.TryAdd(key, command))
            {
                _order.Enqueue(key);
                if (_order.Count > MostInMemory)
                {
                    _kept.Remove(_order.Dequeue());
                }
            }
        }

        return key;
    }

    /// <summary>Writes commands that are in memory into a crew's book, so that their buttons outlive this process.</summary>
    public async Task SaveAsync(string crew, IEnumerable<string> keys, CancellationToken cancellationToken)
    {
        var commands = new Dictionary<string, string>();
        foreach (var key in keys)
        {
            if (InMemory(key) is { } command)
            {
                commands[key] = command;
            }
        }

        if (commands.Count > 0 && !await book.TryKeepAsync(crew, commands, clock.GetUtcNow(), cancellationToken))
        {
            log.LogWarning("{Count} buttons of crew {Crew} work until this process ends: they could not be stored", commands.Count, crew);
        }
    }

    /// <summary>The command; null when it was never kept, for too long, or for another crew.</summary>
    public async ValueTask<string?> FindAsync(string? crew, string key, CancellationToken cancellationToken) =>
        InMemory(key) ?? (crew is null ? null : await book.FindAsync(crew, key, clock.GetUtcNow(), cancellationToken));

    private string? InMemory(string key)
    {
        lock (_gate)
        {
            return _kept.GetValueOrDefault(key);
        }
    }
}
