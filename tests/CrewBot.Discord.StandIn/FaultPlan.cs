namespace CrewBot.Discord.StandIn;

/// <summary>Decides which requests are answered otherwise than usual.</summary>
public sealed class FaultPlan
{
    private readonly Lock _gate = new();
    private readonly List<PlannedFault> _planned = [];

    /// <summary>Asked for every request that no planned fault takes: method and path in, reply or nothing out.</summary>
    public Func<string, string, CannedReply?> Otherwise { get; set; } = static (_, _) => null;

    /// <summary>Answers the next requests whose path contains the text with this reply.</summary>
    public void Next(string pathPart, CannedReply reply, int times = 1)
    {
        lock (_gate)
        {
            _planned.Add(new PlannedFault(pathPart, reply, times));
        }
    }

    public void Clear()
    {
        lock (_gate)
        {
            _planned.Clear();
        }
    }

    internal CannedReply? Take(string method, string path)
    {
        lock (_gate)
        {
            var index = _planned.FindIndex(fault => path.Contains(fault.PathPart, StringComparison.Ordinal));
            if (index < 0)
            {
                return Otherwise(method, path);
            }

            var fault = _planned[index];
            _planned.RemoveAt(index);
            if (fault.Times > 1)
            {
                _planned.Insert(index, fault with { Times = fault.Times - 1 });
            }

            return fault.Reply;
        }
    }

    private sealed record PlannedFault(string PathPart, CannedReply Reply, int Times);
}
