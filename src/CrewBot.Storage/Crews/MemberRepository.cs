using System.Data.Common;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Crews;

/// <summary>The people of a crew. Their names stand here and nowhere else, but for what was posted.</summary>
public sealed class MemberRepository(CrewSession session)
{
    /// <summary>What everybody is called who was erased.</summary>
    public const string Former = "former angler";

    private const string FindSql =
        "SELECT id, name, role, units, platform_id FROM member WHERE crew_id = @CrewId AND platform_id = @PlatformId";

    private const string AddSql = """
        INSERT INTO member (crew_id, platform_id, name) VALUES (@CrewId, @PlatformId, @Name)
        RETURNING id, name, role, units, platform_id
        """;

    private const string FindFormerSql = "SELECT id FROM member WHERE crew_id = @CrewId AND platform_id IS NULL ORDER BY id LIMIT 1";

    private const string AddFormerSql = "INSERT INTO member (crew_id, name) VALUES (@CrewId, @Name) RETURNING id";

    private const string KeepNameSql = """
        INSERT INTO member_name (crew_id, member_id, name) VALUES (@CrewId, @Id, @Name) ON CONFLICT DO NOTHING
        """;

    private const string NamesOfSql = """
        SELECT name FROM member WHERE crew_id = @CrewId AND id = @Id
        UNION SELECT name FROM member_name WHERE crew_id = @CrewId AND member_id = @Id
        """;

    private const string RenameSql = "UPDATE member SET name = @Name WHERE crew_id = @CrewId AND id = @Id";

    private const string SetRoleSql = "UPDATE member SET role = @Role WHERE crew_id = @CrewId AND id = @Id";

    private const string SetUnitsSql = "UPDATE member SET units = @Units WHERE crew_id = @CrewId AND id = @Id";

    private const string AllSql =
        "SELECT id, name, role, units, platform_id FROM member WHERE crew_id = @CrewId AND platform_id IS NOT NULL ORDER BY name, id";

    private const string NamesSql = "SELECT id, name FROM member WHERE crew_id = @CrewId";

    /// <summary>The person whom the platform knows by this id; null when they have stored nothing here.</summary>
    public async Task<CrewMember?> FindAsync(string platformId) =>
        Of(await session.FirstOrDefaultAsync(FindSql, new { session.CrewId, PlatformId = platformId }, MemberRow.Rows));

    /// <summary>The person whom the platform knows by this id, by the name they go by now.</summary>
    public async Task<CrewMember> FindOrAddAsync(string platformId, string name)
    {
        if (await FindAsync(platformId) is not { } known)
        {
            return Of(await session.SingleAsync(AddSql, new { session.CrewId, PlatformId = platformId, Name = name }, MemberRow.Rows))!;
        }

        if (known.Name != name)
        {
            await session.ExecuteAsync(KeepNameSql, new { session.CrewId, known.Id, known.Name });
            await session.ExecuteAsync(RenameSql, new { session.CrewId, known.Id, Name = name });
        }

        return known with { Name = name };
    }

    /// <summary>The number of a person whose name is no longer known; somebody new where the crew has none.</summary>
    public async Task<long> FindOrAddFormerAsync() =>
        await session.FirstOrDefaultAsync(FindFormerSql, new { session.CrewId }, Column.LongOrNull)
            ?? await session.SingleAsync(AddFormerSql, new { session.CrewId, Name = Former }, Column.Long);

    public Task SetRoleAsync(long id, CrewRole role) =>
        session.ExecuteAsync(SetRoleSql, new { session.CrewId, Id = id, Role = Words.Write(role) });

    public Task SetUnitsAsync(long id, UnitSystem units) =>
        session.ExecuteAsync(SetUnitsSql, new { session.CrewId, Id = id, Units = Words.Write(units) });

    /// <summary>Everybody who was not erased, by name.</summary>
    public async Task<IReadOnlyList<CrewMember>> AllAsync() =>
        [.. (await session.QueryAsync(AllSql, new { session.CrewId }, MemberRow.Rows)).Select(row => Of(row)!)];

    /// <summary>What everybody is called, by number; who was erased too.</summary>
    public async Task<IReadOnlyDictionary<long, string>> NamesAsync() =>
        (await session.QueryAsync(NamesSql, new { session.CrewId }, NameRow.Rows)).ToDictionary(row => row.Id, row => row.Name);

    /// <summary>What one person is called and was called before.</summary>
    public Task<IReadOnlyList<string>> NamesOfAsync(long id) => session.QueryAsync(NamesOfSql, new { session.CrewId, Id = id }, Column.Text);

    private static CrewMember? Of(MemberRow? row) =>
        row is null ? null : new CrewMember(row.Id, row.Name, Words.Read<CrewRole>(row.Role)!.Value, Words.Read<UnitSystem>(row.Units))
        {
            PlatformId = row.PlatformId,
        };

    internal sealed record NameRow(long Id, string Name)
    {
        public static Func<DbDataReader, NameRow> Rows(DbDataReader reader) => reader.GetRowParser<NameRow>();
    }

    internal sealed record MemberRow(long Id, string Name, string Role, string? Units, string? PlatformId)
    {
        public static Func<DbDataReader, MemberRow> Rows(DbDataReader reader) => reader.GetRowParser<MemberRow>();
    }
}
