using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>The latest interactions and messages by id: an event that is delivered twice is handled once.</summary>
internal sealed class SeenEvents
{
    private const int MostKept = 16_384;

    private readonly Lock _gate = new();
    private readonly HashSet<Snowflake> _seen = new(MostKept);
    private readonly Snowflake[] _ring = new Snowflake[MostKept];
    private long _count;

    /// <summary>Whether the id is new.</summary>
    public bool TryAdd(Snowflake id)
    {
        lock (_gate)
        {
            if (!_seen.Add(id))
            {
                return false;
            }

            ref var slot = ref _ring[_count % MostKept];
            if (_count++ >= MostKept)
            {
                _seen.Remove(slot);
            }

            slot = id;
            return true;
        }
    }
}
