namespace CrewBot.Discord.StandIn;

/// <summary>A session that outlives its connection: its events are kept for a resume.</summary>
public sealed class StandInSession(string id)
{
    private readonly Lock _gate = new();
    private readonly List<string> _events = [];

    public string Id { get; } = id;

    public long Sequence
    {
        get
        {
            lock (_gate)
            {
                return _events.Count;
            }
        }
    }

    /// <summary>Numbers an event and keeps it.</summary>
    public string Add(string name, string dataJson)
    {
        lock (_gate)
        {
            var frame = FormattableString.Invariant(
                $$"""{"op":0,"t":"{{name}}","s":{{_events.Count + 1}},"d":{{dataJson}}}""");
            _events.Add(frame);
            return frame;
        }
    }

    /// <summary>The events after a sequence number, oldest first.</summary>
    public IReadOnlyList<string> After(long sequence)
    {
        lock (_gate)
        {
            return [.. _events.Skip((int)sequence)];
        }
    }
}
