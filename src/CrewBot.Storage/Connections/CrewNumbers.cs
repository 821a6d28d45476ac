using System.Collections.Concurrent;

namespace CrewBot.Storage.Connections;

/// <summary>Finds the number of a crew by the key that its platform knows it by.</summary>
internal sealed class CrewNumbers
{
    private const string FindSql = "SELECT id FROM crew WHERE key = @Key";

    private const string AddSql = "INSERT INTO crew (key) VALUES (@Key) RETURNING id";

    private const string AllSql = "SELECT key FROM crew ORDER BY id";

    // A crew keeps its number for good, so what was committed once can be remembered.
    private readonly ConcurrentDictionary<string, long> _committed = new(StringComparer.Ordinal);

    /// <summary>The crew's number as committed; <see cref="CrewSession.NoCrew"/> while it has stored nothing.</summary>
    public long Find(PreparedConnection connection, string key)
    {
        if (_committed.TryGetValue(key, out var known))
        {
            return known;
        }

        if (connection.Query(FindSql, new { Key = key }, Column.Long) is not [var found])
        {
            return CrewSession.NoCrew;
        }

        _committed.TryAdd(key, found);
        return found;
    }

    /// <summary>The crew's number; a new one on its first write.</summary>
    public long FindOrAdd(PreparedConnection connection, string key) =>
        _committed.TryGetValue(key, out var known) ? known
        : connection.Query(FindSql, new { Key = key }, Column.Long) is [var found] ? found
        : connection.Query(AddSql, new { Key = key }, Column.Long)[0];

    /// <summary>The keys of all crews, for work that is done crew by crew.</summary>
    public static IReadOnlyList<string> Keys(PreparedConnection connection) => connection.Query(AllSql, Column.Text);
}
