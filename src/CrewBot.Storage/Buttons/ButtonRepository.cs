using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Buttons;

/// <summary>Commands that a button stands for and is too small to carry, so that it outlives a restart.</summary>
public sealed class ButtonRepository(CrewSession session)
{
    private const string KeepSql = """
        INSERT INTO long_button (crew_id, key, command, kept_at_ms) VALUES (@CrewId, @Key, @Command, @KeptAtMs)
        ON CONFLICT (crew_id, key) DO UPDATE SET kept_at_ms = excluded.kept_at_ms
        """;

    private const string FindSql = "SELECT command FROM long_button WHERE crew_id = @CrewId AND key = @Key AND kept_at_ms >= @FromMs";

    private const string ForgetSql = "DELETE FROM long_button WHERE crew_id = @CrewId AND kept_at_ms < @BeforeMs";

    /// <summary>How long a button works.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(7);

    /// <summary>Keeps a command; one that is kept already is kept from now on.</summary>
    public Task KeepAsync(string key, string command, DateTimeOffset at) =>
        session.ExecuteAsync(KeepSql, new { session.CrewId, Key = key, Command = command, KeptAtMs = Instants.Write(at) });

    /// <summary>The command; null when it was never kept, or for too long.</summary>
    public Task<string?> FindAsync(string key, DateTimeOffset now) =>
        session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Key = key, FromMs = Instants.Write(now - Kept) }, Column.Text);

    /// <summary>Forgets the commands from before an instant.</summary>
    public Task ForgetAsync(DateTimeOffset before) => session.ExecuteAsync(ForgetSql, new { session.CrewId, BeforeMs = Instants.Write(before) });
}
