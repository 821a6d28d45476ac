using System.Data.Common;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Crews;

/// <summary>The waters of a crew, with their names, spots and rules.</summary>
public sealed class WaterRepository(CrewSession session)
{
    private const string FindSql = "SELECT water_id FROM water_name WHERE crew_id = @CrewId AND plain = @Plain";

    private const string NamedSql = """
        SELECT w.id, w.name FROM water_name n JOIN water w ON w.crew_id = n.crew_id AND w.id = n.water_id
        WHERE n.crew_id = @CrewId AND n.plain = @Plain
        """;

    private const string AddSql = "INSERT INTO water (crew_id, name) VALUES (@CrewId, @Name) RETURNING id";

    private const string TouchSql = "UPDATE crew SET revision = revision + 1 WHERE id = @CrewId";

    private const string AddNameSql =
        "INSERT INTO water_name (crew_id, plain, water_id, name) VALUES (@CrewId, @Plain, @WaterId, @Name)";

    private const string PlaceSql = """
        UPDATE water SET latitude_cdeg = @Latitude, longitude_cdeg = @Longitude WHERE crew_id = @CrewId AND id = @WaterId
        """;

    private const string AddSpotSql = """
        INSERT INTO spot (crew_id, water_id, plain, name) VALUES (@CrewId, @WaterId, @Plain, @Name)
        ON CONFLICT (crew_id, water_id, plain) DO UPDATE SET name = excluded.name
        RETURNING id
        """;

    private const string FindSpotSql = "SELECT id FROM spot WHERE crew_id = @CrewId AND water_id = @WaterId AND plain = @Plain";

    private const string SetRuleSql = """
        INSERT INTO water_rule (crew_id, water_id, rule, value, reference)
        VALUES (@CrewId, @WaterId, @Rule, @Value, @Reference)
        ON CONFLICT (crew_id, water_id, rule) DO UPDATE SET value = excluded.value, reference = excluded.reference
        """;

    private const string RemoveRuleSql =
        "DELETE FROM water_rule WHERE crew_id = @CrewId AND water_id = @WaterId AND rule = @Rule";

    private const string WatersSql =
        "SELECT id, name, latitude_cdeg, longitude_cdeg FROM water WHERE crew_id = @CrewId ORDER BY id";

    private const string NamesSql = "SELECT water_id, name FROM water_name WHERE crew_id = @CrewId ORDER BY water_id, plain";

    private const string SpotsSql = "SELECT water_id, id, name FROM spot WHERE crew_id = @CrewId ORDER BY water_id, plain";

    private const string RulesSql =
        "SELECT water_id, rule, value, reference FROM water_rule WHERE crew_id = @CrewId ORDER BY water_id, rule";

    private const string RulesOfSql =
        "SELECT water_id, rule, value, reference FROM water_rule WHERE crew_id = @CrewId AND water_id = @WaterId ORDER BY rule";

    /// <summary>The number of the water that answers to a name; null when none does.</summary>
    public Task<long?> FindAsync(string name) =>
        session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Plain = RecordSet.Plain(name) }, Column.LongOrNull);

    /// <summary>The water that answers to a name, with what it is called first; null when none does.</summary>
    public async Task<(long Id, string Name)?> NamedAsync(string name) =>
        await session.ReadAsync(
            NamedSql, new { session.CrewId, Plain = RecordSet.Plain(name) }, row => (row.GetInt64(0), row.GetString(1))) is [var found] ? found : null;

    /// <summary>Adds a water under a name that is free.</summary>
    /// <returns>Its number.</returns>
    public async Task<long> AddAsync(string name)
    {
        var id = await session.SingleAsync(AddSql, new { session.CrewId, Name = name }, Column.Long);
        await AddNameAsync(id, name);
        return id;
    }

    /// <summary>Lets a water answer to one more name, which must be free.</summary>
    public async Task AddNameAsync(long waterId, string name)
    {
        await session.ExecuteAsync(AddNameSql, new { session.CrewId, Plain = RecordSet.Plain(name), WaterId = waterId, Name = name });
        await TouchAsync();
    }

    /// <summary>Says where a water lies; kept to two decimals of a degree.</summary>
    public async Task PlaceAsync(long waterId, decimal latitude, decimal longitude)
    {
        await session.ExecuteAsync(
            PlaceSql, new { session.CrewId, WaterId = waterId, Latitude = (long)decimal.Round(latitude * 100), Longitude = (long)decimal.Round(longitude * 100) });
        await TouchAsync();
    }

    /// <summary>Names a place in a water.</summary>
    /// <returns>Its number: the old one when the name was there already.</returns>
    public async Task<long> AddSpotAsync(long waterId, string name)
    {
        var id = await session.SingleAsync(
            AddSpotSql, new { session.CrewId, WaterId = waterId, Plain = RecordSet.Plain(name), Name = name }, Column.Long);
        await TouchAsync();
        return id;
    }

    /// <summary>The number of the spot in a water that answers to a name; null when none does.</summary>
    public Task<long?> FindSpotAsync(long waterId, string name) =>
        session.FirstOrDefaultAsync(FindSpotSql, new { session.CrewId, WaterId = waterId, Plain = RecordSet.Plain(name) }, Column.LongOrNull);

    /// <summary>Sets a rule of a water.</summary>
    public async Task SetRuleAsync(long waterId, WaterRule rule)
    {
        await session.ExecuteAsync(SetRuleSql, new { session.CrewId, WaterId = waterId, rule.Rule, rule.Value, rule.Reference });
        await TouchAsync();
    }

    /// <summary>Makes a rule of a water unknown again.</summary>
    public async Task RemoveRuleAsync(long waterId, string rule)
    {
        await session.ExecuteAsync(RemoveRuleSql, new { session.CrewId, WaterId = waterId, Rule = rule });
        await TouchAsync();
    }

    /// <summary>What the crew has read of a water's rules.</summary>
    public async Task<IReadOnlyList<WaterRule>> RulesAsync(long waterId) =>
        [.. (await session.QueryAsync(RulesOfSql, new { session.CrewId, WaterId = waterId }, RuleRow.Rows)).Select(row => new WaterRule(row.Rule, row.Value, row.Reference))];

    /// <summary>Every water, in the order they were added.</summary>
    public async Task<IReadOnlyList<Water>> AllAsync()
    {
        var crew = new { session.CrewId };
        var waters = await session.QueryAsync(WatersSql, crew, WaterRow.Rows);
        var names = (await session.QueryAsync(NamesSql, crew, NameRow.Rows)).ToLookup(row => row.WaterId, row => row.Name);
        var spots = (await session.QueryAsync(SpotsSql, crew, SpotRow.Rows)).ToLookup(row => row.WaterId, row => new Spot(row.Id, row.Name));
        var rules = (await session.QueryAsync(RulesSql, crew, RuleRow.Rows))
            .ToLookup(row => row.WaterId, row => new WaterRule(row.Rule, row.Value, row.Reference));
        return
        [
            .. waters.Select(row => new Water(row.Id, row.Name, [.. names[row.Id]], [.. spots[row.Id]], [.. rules[row.Id]])
            {
                At = row is { LatitudeCdeg: { } latitude, LongitudeCdeg: { } longitude } ? (latitude / 100m, longitude / 100m) : null,
            }),
        ];
    }

    private async Task TouchAsync() => await session.ExecuteAsync(TouchSql, new { session.CrewId });

    internal sealed record WaterRow(long Id, string Name, long? LatitudeCdeg, long? LongitudeCdeg)
    {
        public static Func<DbDataReader, WaterRow> Rows(DbDataReader reader) => reader.GetRowParser<WaterRow>();
    }

    internal sealed record NameRow(long WaterId, string Name)
    {
        public static Func<DbDataReader, NameRow> Rows(DbDataReader reader) => reader.GetRowParser<NameRow>();
    }

    internal sealed record SpotRow(long WaterId, long Id, string Name)
    {
        public static Func<DbDataReader, SpotRow> Rows(DbDataReader reader) => reader.GetRowParser<SpotRow>();
    }

    internal sealed record RuleRow(long WaterId, string Rule, string Value, string Reference)
    {
        public static Func<DbDataReader, RuleRow> Rows(DbDataReader reader) => reader.GetRowParser<RuleRow>();
    }
}
