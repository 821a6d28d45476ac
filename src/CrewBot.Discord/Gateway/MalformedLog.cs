using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>Says once of each kind that something unreadable came and was dropped. Its content is never shown.</summary>
internal sealed class MalformedLog(ILogger log)
{
    private readonly ConcurrentDictionary<string, bool> _reported = new(StringComparer.Ordinal);

    public void Report(string kind)
    {
        if (_reported.TryAdd(kind, true))
        {
            log.LogWarning("Dropped what cannot be read: {Kind}. Further ones of this kind are dropped in silence", kind);
        }
    }
}
