using System.Security.Cryptography;

namespace CrewBot.Discord.Mapping;

/// <summary>Remembers the latest of the commands that are too long for a component's id.</summary>
internal sealed class PressMemory
{
    private const int MostKept = 2_000;
    private const int KeyBytes = 9;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, Press> _kept = [];
    private readonly Queue<string> _order = [];

    public string Keep(Press press)
    {
        var key = Convert.ToBase64String(RandomNumberGenerator.GetBytes(KeyBytes));
        lock (_gate)
        {
            _kept[key] = press;
            _order.Enqueue(key);
            if (_order.Count > MostKept)
            {
                _kept.Remove(_order.Dequeue());
            }
        }

        return key;
    }

    public Press? Find(string key)
    {
        lock (_gate)
        {
            return _kept.GetValueOrDefault(key);
        }
    }
}
