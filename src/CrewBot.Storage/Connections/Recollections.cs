namespace CrewBot.Storage.Connections;

/// <summary>What was read over a connection and stays true until anything is committed over another, in whatever process.</summary>
internal sealed class Recollections(PreparedConnection connection)
{
    private const int MostKept = 1_000;

    // Changes with every commit that this connection did not make, and with nothing else.
    private const string VersionSql = "PRAGMA data_version";

    private readonly Dictionary<(string Crew, string Subject), object> _kept = [];
    private long _version;

    /// <summary>What is known of a subject; null when it has to be read.</summary>
    public object? Find(string crew, string subject)
    {
        var version = connection.Query(VersionSql, Column.Long)[0];
        if (version != _version || _kept.Count > MostKept)
        {
            _kept.Clear();
            _version = version;
        }

        return _kept.GetValueOrDefault((crew, subject));
    }

    /// <summary>Keeps what was read in the same transaction in which it was looked for and not found.</summary>
    public void Keep(string crew, string subject, object known) => _kept[(crew, subject)] = known;
}
