using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Measurements;

/// <summary>Sends <c>/rig plan</c> again and again and takes the time until each acknowledgement comes in.</summary>
internal sealed class Load
{
    private const ulong FirstId = 1_600_000_000_000_000_000;
    private static readonly TimeSpan Deadline = TimeSpan.FromSeconds(3);

    private readonly Bot _bot;
    private readonly string _before;
    private readonly string _after;
    private readonly ConcurrentDictionary<string, Pending> _pending = new();
    private readonly ConcurrentQueue<double> _milliseconds = new();
    private ulong _next = FirstId;
    private long _sequence = 1_000;
    private long _accepted;

    public Load(Bot bot)
    {
        _bot = bot;
        var sample = bot.Server.Interactions.Command("rig", InteractionMaker.Subcommand(
            "plan",
            InteractionMaker.Option("species", 3, "walleye"),
            InteractionMaker.Option("depth", 3, "24ft"),
            InteractionMaker.Option("mood", 3, "negative")));
        var id = sample["id"]!.GetValue<string>();
        var text = sample.ToJsonString();
        _before = text[..text.IndexOf(id, StringComparison.Ordinal)];
        _after = text[(_before.Length + id.Length)..];
        bot.Server.OnAccepted = OnAccepted;
    }

    public Bot Bot => _bot;

    public long Accepted => Interlocked.Read(ref _accepted);

    /// <summary>Sends one and waits for its acknowledgement; false when it did not come in time.</summary>
    public async Task<bool> SendAsync(int copies = 1)
    {
        var id = Interlocked.Increment(ref _next).ToString(CultureInfo.InvariantCulture);
        var pending = new Pending(Stopwatch.GetTimestamp());
        _pending[id] = pending;
        for (var copy = 0; copy < copies; copy++)
        {
            await _bot.Socket.SendTextAsync(string.Create(
                CultureInfo.InvariantCulture,
                $$"""{"op":0,"t":"INTERACTION_CREATE","s":{{Interlocked.Increment(ref _sequence)}},"d":{{_before}}{{id}}{{_after}}}"""));
        }

        return await Task.WhenAny(pending.Done.Task, Task.Delay(Deadline)) == pending.Done.Task;
    }

    /// <summary>Sends at an even pace, whether answers come or not.</summary>
    public async Task<int> PacedAsync(int perSecond, int count)
    {
        var watch = Stopwatch.StartNew();
        var sent = new List<Task<bool>>(count);
        for (var number = 0; number < count; number++)
        {
            var due = TimeSpan.FromSeconds((double)number / perSecond) - watch.Elapsed;
            if (due > TimeSpan.FromMilliseconds(1))
            {
                await Task.Delay(due);
            }

            sent.Add(SendAsync());
        }

        return (await Task.WhenAll(sent)).Count(arrived => !arrived);
    }

    /// <summary>Keeps so many in flight.</summary>
    public Task InFlightAsync(int width, int count) => Task.WhenAll(Enumerable.Range(0, width).Select(async _ =>
    {
        for (var number = 0; number < count / width; number++)
        {
            await SendAsync();
        }
    }));

    public (double Median, double Ninetyninth) TakeTimes()
    {
        var times = _milliseconds.ToArray();
        _milliseconds.Clear();
        Array.Sort(times);
        return (times[times.Length / 2], times[(int)(times.Length * 0.99)]);
    }

    private void OnAccepted(string path)
    {
        Interlocked.Increment(ref _accepted);
        if (_pending.TryRemove(path.Split('/')[1], out var pending))
        {
            _milliseconds.Enqueue(Stopwatch.GetElapsedTime(pending.SentAt).TotalMilliseconds);
            pending.Done.TrySetResult();
        }
    }

    private sealed record Pending(long SentAt)
    {
        public TaskCompletionSource Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
