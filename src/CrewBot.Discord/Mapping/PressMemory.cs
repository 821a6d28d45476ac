using System.Security.Cryptography;

namespace CrewBot.Discord.Mapping;

/// <summary>Remembers the latest of the commands that are too long for a component's id.</summary>
internal sealed class PressMemory
{
    private const int MostKept = 2_000;
    private const int KeyBytes = 9;

    private readonly Lock gate = new();
    private readonly Dictionary<string, Press> kept = [];
    private readonly Queue<string> order = [];

    public string Keep(Press press)
    {
        var key = Convert.ToBase64String(RandomNumberGenerator.GetBytes(KeyBytes));
        lock (gate)
        {
            kept[key] = press;
            order.Enqueue(key);
            if (order.Count > MostKept)
            {
                kept.Remove(order.Dequeue());
            }
        }

        return key;
    }

    public Press? Find(string key)
    {
        lock (gate)
        {
            return kept.GetValueOrDefault(key);
        }
    }
}
