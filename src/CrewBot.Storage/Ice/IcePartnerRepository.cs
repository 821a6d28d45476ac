using System.Data.Common;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Ice;

/// <summary>Crews that a crew will share reports of ice with. It takes both to agree.</summary>
public sealed class IcePartnerRepository(CrewSession session)
{
    private const string AgreeSql = """
        INSERT INTO ice_partner (crew_id, partner, shows_spot) VALUES (@CrewId, @Partner, @ShowsSpot)
        ON CONFLICT (crew_id, partner) DO UPDATE SET shows_spot = excluded.shows_spot
        """;

    private const string EndSql = "DELETE FROM ice_partner WHERE crew_id = @CrewId AND partner = @Partner";

    // Another crew's name is read where both name each other, and nowhere else.
    private const string AllSql = """
        SELECT mine.partner AS key, theirs.crew_id IS NOT NULL AS has_agreed, mine.shows_spot, CASE WHEN theirs.crew_id IS NOT NULL THEN there.name END AS name
        FROM ice_partner mine
        JOIN crew here ON here.id = mine.crew_id
        LEFT JOIN crew there ON there.key = mine.partner
        LEFT JOIN ice_partner theirs ON theirs.crew_id = there.id AND theirs.partner = here.key
        WHERE mine.crew_id = @CrewId
        ORDER BY mine.partner
        """;

    // The one statement that reads reports of other crews: both must name each other, and only what is bad and open comes over.
    private const string BadNewsSql = $"""
        WITH partner AS (
            SELECT DISTINCT theirs.crew_id, there.name, known.water_id, theirs.shows_spot FROM ice_partner mine
            JOIN crew here ON here.id = mine.crew_id
            JOIN crew there ON there.key = mine.partner
            JOIN ice_partner theirs ON theirs.crew_id = there.id AND theirs.partner = here.key
            JOIN water_name ours ON ours.crew_id = here.id AND ours.water_id = @WaterId
            JOIN water_name known ON known.crew_id = there.id AND known.plain = ours.plain
            WHERE mine.crew_id = @CrewId
        ), newest AS (
            SELECT bad.crew_id, partner.name, bad.water_id, bad.spot_plain, partner.shows_spot, MAX(bad.at_ms) AS at_ms FROM partner
            JOIN ice_report bad ON bad.crew_id = partner.crew_id AND bad.water_id = partner.water_id AND bad.is_open = 1 AND bad.at_ms >= @FromMs
            GROUP BY bad.crew_id, bad.water_id, bad.spot_plain
        )
        SELECT {IceReportRepository.Columns}, m.name || COALESCE(' of ' || newest.name, '') AS filer {IceReportRepository.From}
        JOIN newest ON newest.crew_id = r.crew_id AND newest.water_id = r.water_id AND newest.spot_plain = r.spot_plain
            AND newest.shows_spot = @ShowsSpot AND r.is_open = 1 AND r.at_ms >= MIN(newest.at_ms, @DayMs)
        ORDER BY r.at_ms DESC, r.number DESC
        """;

    /// <summary>This crew's side of an agreement.</summary>
    /// <param name="partner">The other crew's key.</param>
    /// <param name="showsSpot">Whether they may see the exact spot.</param>
    public Task AgreeAsync(string partner, bool showsSpot) =>
        session.ExecuteAsync(AgreeSql, new { session.CrewId, Partner = partner, ShowsSpot = showsSpot });

    /// <summary>Ends an agreement for both.</summary>
    public Task EndAsync(string partner) => session.ExecuteAsync(EndSql, new { session.CrewId, Partner = partner });

    /// <summary>The crews that this one will share with, whether they have agreed or not.</summary>
    public async Task<IReadOnlyList<IcePartner>> AllAsync() =>
        [.. (await session.QueryAsync(AllSql, new { session.CrewId }, PartnerRow.Rows)).Select(row => row.ToPartner())];

    /// <summary>
    /// Bad news that partner crews have of a water and have not closed, newest first: the newest of each spot, and all of the last
    /// day. Where a partner hides the spot, whatever could tell it is left out.
    /// </summary>
    /// <param name="waterId">The water, by this crew's number.</param>
    /// <param name="from">The start of the season.</param>
    /// <param name="day">The start of the last day.</param>
    public async Task<IReadOnlyList<FiledIce>> BadNewsAsync(long waterId, DateTimeOffset from, DateTimeOffset day) =>
    [
        .. (await BadNewsAsync(waterId, from, day, showsSpot: true)).Concat((await BadNewsAsync(waterId, from, day, showsSpot: false)).Select(Hidden))
            .OrderByDescending(filed => filed.Entry.MeasuredAt ?? filed.Entry.FiledAt),
    ];

    private async Task<IEnumerable<FiledIce>> BadNewsAsync(long waterId, DateTimeOffset from, DateTimeOffset day, bool showsSpot) =>
        (await session.QueryAsync(
            BadNewsSql,
            new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from), DayMs = Instants.Write(day), ShowsSpot = showsSpot }, IceReportRow.Rows))
        .Select(row => row.ToFiled() with { IsPartners = true });

    private static FiledIce Hidden(FiledIce filed) => filed with
    {
        Entry = filed.Entry with
        {
            Spot = null,
            Page = filed.Entry.Page with
            {
                From = null,
                Note = null,
                Photo = null,
                Quote = filed.Entry.Page.Quote is { } quote ? quote with { Link = null, Text = null } : null,
            },
        },
    };

    internal sealed record PartnerRow
    {
        public static Func<DbDataReader, PartnerRow> Rows(DbDataReader reader) => reader.GetRowParser<PartnerRow>();

        public string Key { get; init; } = "";

        public long HasAgreed { get; init; }

        public long ShowsSpot { get; init; }

        public string? Name { get; init; }

        public IcePartner ToPartner() => new(Key, HasAgreed != 0, ShowsSpot != 0) { Name = Name };
    }
}
