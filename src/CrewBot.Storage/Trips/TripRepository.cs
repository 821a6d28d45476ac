using System.Data.Common;
using System.Text.Json;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Trips;

/// <summary>A crew's trips. A change reads a trip, changes it and saves it in one transaction, so nobody's change is lost.</summary>
public sealed class TripRepository(CrewSession session)
{
    // A trip that was stored without the unit of its depth.
    private const string EarlierDepthUnit = "ft";

    private const string Columns = "number, planned_by, water_id, meet_at_ms, return_at_ms, is_cancelled, roster";

    private const string NextNumberSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM trip WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO trip (crew_id, number, planned_by, water_id, meet_at_ms, return_at_ms, is_cancelled, roster)
        VALUES (@CrewId, @Number, @PlannedBy, @WaterId, @MeetAtMs, @ReturnAtMs, @IsCancelled, @Roster)
        """;

    private const string FindSql = $"SELECT {Columns} FROM trip WHERE crew_id = @CrewId AND number = @Number";

    private const string NextSql = $"""
        SELECT {Columns} FROM trip WHERE crew_id = @CrewId AND return_at_ms >= @FromMs AND is_cancelled = 0
        ORDER BY meet_at_ms, number LIMIT 1
        """;

    private const string LastSql = $"""
        SELECT {Columns} FROM trip WHERE crew_id = @CrewId AND meet_at_ms <= @AtMs AND is_cancelled = 0
        ORDER BY meet_at_ms DESC, number DESC LIMIT 1
        """;

    private const string ComingSql = $"""
        SELECT {Columns} FROM trip WHERE crew_id = @CrewId AND water_id = @WaterId AND meet_at_ms >= @FromMs AND is_cancelled = 0
        ORDER BY meet_at_ms, number
        """;

    private const string UnfinishedSql = $"""
        SELECT {Columns} FROM trip WHERE crew_id = @CrewId AND return_at_ms >= @FromMs AND is_cancelled = 0
        ORDER BY meet_at_ms, number
        """;

    private const string FindOwnSql = """
        SELECT item.value FROM trip, json_each(trip.roster, '$.roster.items') item
        WHERE trip.crew_id = @CrewId AND json_extract(item.value, '$.family') IS NOT NULL
            AND json_extract(item.value, '$.kind') = @Name COLLATE NOCASE
        ORDER BY trip.number DESC LIMIT 1
        """;

    private const string SaveSql = """
        UPDATE trip SET water_id = @WaterId, meet_at_ms = @MeetAtMs, return_at_ms = @ReturnAtMs, is_cancelled = @IsCancelled, roster = @Roster
        WHERE crew_id = @CrewId AND number = @Number
        """;

    /// <summary>Adds a trip.</summary>
    /// <returns>Its number within the crew.</returns>
    public async Task<long> AddAsync(Trip trip)
    {
        var number = await session.SingleAsync(NextNumberSql, new { session.CrewId }, Column.Long);
        await WriteAsync(AddSql, trip with { Number = number });
        return number;
    }

    /// <summary>A trip by its number; null when there is none.</summary>
    public async Task<Trip?> FindAsync(long number) =>
        Of(await session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Number = number }, TripRow.Rows));

    /// <summary>The first trip that is not cancelled and whose return lies at an instant or later; null when there is none.</summary>
    public async Task<Trip?> NextAsync(DateTimeOffset from) =>
        Of(await session.FirstOrDefaultAsync(NextSql, new { session.CrewId, FromMs = Instants.Write(from) }, TripRow.Rows));

    /// <summary>The trip that began last, over or not, and is not cancelled; null when none has begun at that instant.</summary>
    public async Task<Trip?> LastAsync(DateTimeOffset at) =>
        Of(await session.FirstOrDefaultAsync(LastSql, new { session.CrewId, AtMs = Instants.Write(at) }, TripRow.Rows));

    /// <summary>The trips to a water that are not cancelled and whose people meet at an instant or later.</summary>
    public async Task<IReadOnlyList<Trip>> ComingAsync(long waterId, DateTimeOffset from) =>
    [
        .. (await session.QueryAsync(ComingSql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) }, TripRow.Rows))
            .Select(row => Of(row)!),
    ];

    /// <summary>The trips that are not cancelled and whose return lies at an instant or later.</summary>
    public async Task<IReadOnlyList<Trip>> UnfinishedAsync(DateTimeOffset from) =>
    [
        .. (await session.QueryAsync(UnfinishedSql, new { session.CrewId, FromMs = Instants.Write(from) }, TripRow.Rows))
            .Select(row => Of(row)!),
    ];

    /// <summary>Gear of the crew's own by what it is called, as somebody brought it last; null when nobody did.</summary>
    public async Task<TripItem?> FindOwnAsync(string name) =>
        await session.FirstOrDefaultAsync(FindOwnSql, new { session.CrewId, Name = name }, Column.Text) is { } item
            ? JsonSerializer.Deserialize(item, TripJson.Default.TripItem)
            : null;

    /// <summary>Keeps a trip as it has become.</summary>
    public Task SaveAsync(Trip trip) => WriteAsync(SaveSql, trip);

    private Task<int> WriteAsync(string sql, Trip trip) => session.ExecuteAsync(sql, new
    {
        session.CrewId,
        trip.Number,
        trip.PlannedBy,
        trip.WaterId,
        MeetAtMs = Instants.Write(trip.MeetAt),
        ReturnAtMs = Instants.Write(trip.ReturnAt),
        trip.IsCancelled,
        Roster = JsonSerializer.Serialize(PagesOf(trip), TripJson.Default.TripPages),
    });

    private static TripPages PagesOf(Trip trip) => new(trip.Place, trip.Species, trip.Note, trip.Roster)
    {
        Room = trip.Room,
        DepthNanometres = trip.Depth?.Nanometres,
        DepthUnit = StoredUnits.WordOf(trip.Depth),
    };

    private static Trip? Of(TripRow? row)
    {
        if (row is null)
        {
            return null;
        }

        var pages = JsonSerializer.Deserialize(row.Roster, TripJson.Default.TripPages)!;
        return new Trip(
            row.PlannedBy, row.WaterId, Instants.Read(row.MeetAtMs), Instants.Read(row.ReturnAtMs))
        {
            Number = row.Number,
            IsCancelled = row.IsCancelled != 0,
            Place = pages.Place,
            Species = pages.Species,
            Note = pages.Note,
            Room = pages.Room,
            Depth = StoredUnits.LengthOf(pages.DepthNanometres, pages.DepthUnit ?? EarlierDepthUnit),
            Roster = pages.Roster,
        };
    }

    internal sealed record TripRow(
        long Number, long PlannedBy, long WaterId, long MeetAtMs, long ReturnAtMs, long IsCancelled, string Roster)
    {
        public static Func<DbDataReader, TripRow> Rows(DbDataReader reader) => reader.GetRowParser<TripRow>();
    }
}
