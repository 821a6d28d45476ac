using System.Data.Common;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Ice;

/// <summary>What a crew asks of ice beyond the program's own figures, which it can only raise.</summary>
public sealed class IceRuleRepository(CrewSession session)
{
    private const string ChooseSql = """
        INSERT INTO ice_authority (crew_id, authority) VALUES (@CrewId, @Authority)
        ON CONFLICT (crew_id) DO UPDATE SET authority = excluded.authority
        """;

    private const string AuthoritySql = "SELECT authority FROM ice_authority WHERE crew_id = @CrewId";

    private const string SetSql = """
        INSERT INTO ice_figure (crew_id, load, thickness_nm, unit, reference) VALUES (@CrewId, @Load, @ThicknessNm, @Unit, @Reference)
        ON CONFLICT (crew_id, load) DO UPDATE
        SET thickness_nm = excluded.thickness_nm, unit = excluded.unit, reference = excluded.reference
        """;

    private const string FiguresSql = "SELECT load, thickness_nm, unit, reference FROM ice_figure WHERE crew_id = @CrewId ORDER BY load";

    /// <summary>Chooses an authority's table by its key.</summary>
    public Task ChooseAsync(string authority) => session.ExecuteAsync(ChooseSql, new { session.CrewId, Authority = authority });

    /// <summary>The table that was chosen; null for none.</summary>
    public async Task<AuthorityTable?> AuthorityAsync() =>
        await session.FirstOrDefaultAsync(AuthoritySql, new { session.CrewId }, Column.Text) is { } key ? AuthorityTable.Find(key) : null;

    /// <summary>Sets the crew's own figure for a load.</summary>
    public Task SetAsync(IceUse use, ExactLength thickness, string reference) => session.ExecuteAsync(SetSql, new
    {
        session.CrewId,
        Load = Words.Write(use),
        ThicknessNm = thickness.Nanometres,
        Unit = StoredUnits.WordOf(thickness),
        Reference = reference,
    });

    /// <summary>The crew's own figures.</summary>
    public async Task<IReadOnlyList<CrewFigure>> FiguresAsync() =>
    [
        .. (await session.QueryAsync(FiguresSql, new { session.CrewId }, FigureRow.Rows)).Select(row => new CrewFigure(
            Words.Read<IceUse>(row.Load)!.Value, StoredUnits.LengthOf(row.ThicknessNm, row.Unit)!.Value.Length, row.Reference)),
    ];

    internal sealed record FigureRow(string Load, long ThicknessNm, string Unit, string Reference)
    {
        public static Func<DbDataReader, FigureRow> Rows(DbDataReader reader) => reader.GetRowParser<FigureRow>();
    }
}
