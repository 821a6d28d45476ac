using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Connections;

/// <summary>What was read over a connection and stays true until anything is committed over another, in whatever process.</summary>
/// <param name="connection">Open; belongs to somebody else.</param>
internal sealed class Recollections(SqliteConnection connection) : IDisposable
{
    private const int MostKept = 1_000;

    // Changes with every commit that this connection did not make, and with nothing else.
    private readonly CompiledStatement _versionNow = new(connection, "PRAGMA data_version");
    private readonly Dictionary<(string Crew, string Subject), object> _kept = [];
    private long _version;

    /// <summary>What is known of a subject; null when it has to be read.</summary>
    public object? Find(string crew, string subject)
    {
        var version = ReadVersion();
        if (version != _version || _kept.Count > MostKept)
        {
            _kept.Clear();
            _version = version;
        }

        return _kept.GetValueOrDefault((crew, subject));
    }

    /// <summary>Keeps what was read in the same transaction in which it was looked for and not found.</summary>
    public void Keep(string crew, string subject, object known) => _kept[(crew, subject)] = known;

    public void Dispose() => _versionNow.Dispose();

    // With every question that is recalled: the statement itself is all that this takes.
    private long ReadVersion()
    {
        try
        {
            _versionNow.Step();
            return _versionNow.Row.GetInt64(0);
        }
        finally
        {
            _versionNow.Reset();
        }
    }
}
