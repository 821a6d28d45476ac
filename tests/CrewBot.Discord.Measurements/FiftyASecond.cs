using System.Diagnostics;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Measurements;

/// <summary>The platform's global limit as published: 50 requests in any second for each bot, answers to interactions apart.</summary>
internal sealed class FiftyASecond
{
    private const int Most = 50;

    private readonly Lock _gate = new();
    private readonly Queue<long> _passed = new();

    /// <summary>How many requests came too early.</summary>
    public int Refused { get; private set; }

    /// <summary>How many messages to channels passed.</summary>
    public int Told { get; private set; }

    /// <summary>Lets a request pass, or says when to come again.</summary>
    public CannedReply? Judge(string method, string path)
    {
        if (path.StartsWith("interactions/", StringComparison.Ordinal) || path.StartsWith("webhooks/", StringComparison.Ordinal))
        {
            return null;
        }

        lock (_gate)
        {
            var now = Stopwatch.GetTimestamp();
            while (_passed.TryPeek(out var first) && Stopwatch.GetElapsedTime(first, now) >= TimeSpan.FromSeconds(1))
            {
                _passed.Dequeue();
            }

            if (_passed.Count < Most)
            {
                _passed.Enqueue(now);
                Told += method == "POST" && path.StartsWith("channels/", StringComparison.Ordinal) ? 1 : 0;
                return null;
            }

            Refused++;
            return CannedReply.Limited(1 - Stopwatch.GetElapsedTime(_passed.Peek(), now).TotalSeconds, global: true);
        }
    }
}
