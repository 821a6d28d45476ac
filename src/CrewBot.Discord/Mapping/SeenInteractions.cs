using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>The latest interactions by id: an event that is delivered twice is handled once.</summary>
internal sealed class SeenInteractions
{
    private const int MostKept = 16_384;

    private readonly Lock gate = new();
    private readonly HashSet<Snowflake> seen = new(MostKept);
    private readonly Snowflake[] ring = new Snowflake[MostKept];
    private long count;

    /// <summary>Whether the id is new.</summary>
    public bool TryAdd(Snowflake id)
    {
        lock (gate)
        {
            if (!seen.Add(id))
            {
                return false;
            }

            ref var slot = ref ring[count % MostKept];
            if (count++ >= MostKept)
            {
                seen.Remove(slot);
            }

            slot = id;
            return true;
        }
    }
}
