using System.Data.Common;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Boxes;

/// <summary>What the anglers of a crew own.</summary>
public sealed class BoxRepository(CrewSession session)
{
    private const string NextSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM gear WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO gear (crew_id, number, member_id, kind, name, record, material, mass_ng, mass_unit, width_nm, width_unit, seats)
        VALUES (@CrewId, @Number, @MemberId, @Kind, @Name, @Record, @Material, @MassNg, @MassUnit, @WidthNm, @WidthUnit, @Seats)
        """;

    private const string SelectSql = """
        SELECT g.number, g.member_id, m.name AS owner, g.kind, g.name, g.record, g.material, g.mass_ng, g.mass_unit,
            g.width_nm, g.width_unit, g.seats
        FROM gear g JOIN member m ON m.crew_id = g.crew_id AND m.id = g.member_id
        WHERE g.crew_id = @CrewId
        """;

    private const string OfSql = SelectSql + " AND g.member_id = @MemberId ORDER BY g.number";

    private const string AllSql = SelectSql + " ORDER BY m.name, g.member_id, g.number";

    private const string RemoveSql = "DELETE FROM gear WHERE crew_id = @CrewId AND member_id = @MemberId AND number = @Number";

    /// <summary>Adds a thing to an angler's box.</summary>
    /// <returns>Its number within the crew.</returns>
    public async Task<long> AddAsync(long memberId, Gear gear)
    {
        var number = await session.SingleAsync(NextSql, new { session.CrewId }, Column.Long);
        await session.ExecuteAsync(AddSql, new
        {
            session.CrewId,
            Number = number,
            MemberId = memberId,
            Kind = Words.Write(gear.Kind),
            gear.Name,
            gear.Record,
            gear.Material,
            MassNg = gear.Mass?.Nanograms,
            MassUnit = StoredUnits.WordOf(gear.Mass),
            WidthNm = gear.Width?.Nanometres,
            WidthUnit = StoredUnits.WordOf(gear.Width),
            gear.Seats,
        });
        return number;
    }

    /// <summary>What an angler owns, in the order it was added.</summary>
    public async Task<IReadOnlyList<OwnedGear>> OfAsync(long memberId) =>
        Of(await session.QueryAsync(OfSql, new { session.CrewId, MemberId = memberId }, GearRow.Rows));

    /// <summary>What the whole crew owns, by owner.</summary>
    public async Task<IReadOnlyList<OwnedGear>> AllAsync() => Of(await session.QueryAsync(AllSql, new { session.CrewId }, GearRow.Rows));

    /// <summary>Takes a thing out of its owner's box.</summary>
    public Task RemoveAsync(long memberId, long number) =>
        session.ExecuteAsync(RemoveSql, new { session.CrewId, MemberId = memberId, Number = number });

    private static IReadOnlyList<OwnedGear> Of(IReadOnlyList<GearRow> rows) => [.. rows.Select(Of)];

    private static OwnedGear Of(GearRow row) => new(row.Number, row.MemberId, row.Owner, new Gear
    {
        Kind = Words.Read<BoxKind>(row.Kind)!.Value,
        Name = row.Name,
        Record = row.Record,
        Material = row.Material,
        Mass = StoredUnits.MassOf(row.MassNg, row.MassUnit),
        Width = StoredUnits.LengthOf(row.WidthNm, row.WidthUnit),
        Seats = (int?)row.Seats,
    });

    internal sealed record GearRow(
        long Number, long MemberId, string Owner, string Kind, string Name, string? Record, string? Material, long? MassNg,
        string? MassUnit, long? WidthNm, string? WidthUnit, long? Seats)
    {
        public static Func<DbDataReader, GearRow> Rows(DbDataReader reader) => reader.GetRowParser<GearRow>();
    }
}
