using System.Data.Common;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Crews;

/// <summary>A crew's own settings.</summary>
public sealed class CrewRepository(CrewSession session)
{
    private const string FindSql = "SELECT units, zone, revision, name, emergency, contact_role FROM crew WHERE id = @CrewId";

    private const string SetNameSql = "UPDATE crew SET name = @Name WHERE id = @CrewId AND name IS NOT @Name";

    private const string SetUnitsSql = "UPDATE crew SET units = @Units, revision = revision + 1 WHERE id = @CrewId";

    private const string SetZoneSql = "UPDATE crew SET zone = @Zone, revision = revision + 1 WHERE id = @CrewId";

    private const string SetEmergencySql = "UPDATE crew SET emergency = @Number WHERE id = @CrewId";

    private const string SetContactRoleSql = "UPDATE crew SET contact_role = @Role WHERE id = @CrewId";

    private const string SetChannelSql = """
        INSERT INTO crew_channel (crew_id, purpose, channel) VALUES (@CrewId, @Purpose, @Channel)
        ON CONFLICT (crew_id, purpose) DO UPDATE SET channel = excluded.channel
        """;

    private const string ChannelsSql = "SELECT purpose, channel FROM crew_channel WHERE crew_id = @CrewId ORDER BY purpose";

    /// <summary>The settings.</summary>
    public async Task<CrewSettings> FindAsync() =>
        await session.FirstOrDefaultAsync(FindSql, new { session.CrewId }, SettingsRow.Rows) is { } row
            ? new CrewSettings(Words.Read<UnitSystem>(row.Units), row.Zone, row.Revision)
            {
                Name = row.Name,
                Emergency = row.Emergency,
                ContactRole = row.ContactRole,
            }
            : CrewSettings.None;

    /// <summary>Notes what the crew is called now.</summary>
    public Task SetNameAsync(string name) => session.ExecuteAsync(SetNameSql, new { session.CrewId, Name = name });

    public Task SetUnitsAsync(UnitSystem units) =>
        session.ExecuteAsync(SetUnitsSql, new { session.CrewId, Units = Words.Write(units) });

    /// <summary>Sets the time zone, by its name in the IANA database.</summary>
    public Task SetZoneAsync(string zone) => session.ExecuteAsync(SetZoneSql, new { session.CrewId, Zone = zone });

    /// <summary>Sets the number to call for help.</summary>
    public Task SetEmergencyAsync(string number) => session.ExecuteAsync(SetEmergencySql, new { session.CrewId, Number = number });

    /// <summary>Sets the role of those who are called when a party is overdue.</summary>
    public Task SetContactRoleAsync(string role) => session.ExecuteAsync(SetContactRoleSql, new { session.CrewId, Role = role });

    /// <summary>Sets where messages of one purpose go.</summary>
    public Task SetChannelAsync(string purpose, string channel) =>
        session.ExecuteAsync(SetChannelSql, new { session.CrewId, Purpose = purpose, Channel = channel });

    /// <summary>Where messages go, by purpose.</summary>
    public async Task<IReadOnlyList<(string Purpose, string Channel)>> ChannelsAsync() =>
        [.. (await session.QueryAsync(ChannelsSql, new { session.CrewId }, ChannelRow.Rows)).Select(row => (row.Purpose, row.Channel))];

    internal sealed record SettingsRow(string? Units, string? Zone, long Revision, string? Name, string? Emergency, string? ContactRole)
    {
        public static Func<DbDataReader, SettingsRow> Rows(DbDataReader reader) => reader.GetRowParser<SettingsRow>();
    }

    internal sealed record ChannelRow(string Purpose, string Channel)
    {
        public static Func<DbDataReader, ChannelRow> Rows(DbDataReader reader) => reader.GetRowParser<ChannelRow>();
    }
}
