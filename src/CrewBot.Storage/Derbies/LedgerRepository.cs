using System.Collections.ObjectModel;
using System.Data.Common;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Derbies;

/// <summary>The records of the crew's derbies. There is no way to change what they say.</summary>
public sealed class LedgerRepository(CrewSession session)
{
    private const string NextSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM derby_event WHERE crew_id = @CrewId AND derby = @Derby";

    private const string NextEntrySql = "SELECT COALESCE(MAX(number), 0) + 1 FROM derby_entry WHERE crew_id = @CrewId AND derby = @Derby";

    private const string AddSql = """
        INSERT INTO derby_event (crew_id, derby, number, kind, at_ms, member_id, angler_id, entry, length_nm, length_unit, stands, words)
        VALUES (@CrewId, @Derby, @Number, @Kind, @AtMs, @MemberId, @AnglerId, @Entry, @LengthNm, @LengthUnit, @Stands, @Words)
        """;

    private const string AddEntrySql = """
        INSERT INTO derby_entry (crew_id, derby, number, catch_number, angler_id, species, length_nm, length_unit, weight_ng, weight_unit,
            water, kept, caught_at_ms, offset_min, photo_hash)
        VALUES (@CrewId, @Derby, @Number, @CatchNumber, @AnglerId, @Species, @LengthNm, @LengthUnit, @WeightNg, @WeightUnit,
            @Water, @Kept, @CaughtAtMs, @OffsetMin, @PhotoHash)
        """;

    private const string SelectSql = """
        SELECT e.number, e.kind, e.at_ms, e.member_id, e.angler_id, e.entry, COALESCE(e.length_nm, f.length_nm) AS length_nm,
            COALESCE(e.length_unit, f.length_unit) AS length_unit, e.stands, e.words, f.catch_number, f.species,
            f.weight_ng, f.weight_unit, f.water, f.kept, f.caught_at_ms, f.offset_min, f.photo_hash
        FROM derby_event e
        LEFT JOIN derby_entry f ON e.kind = 'entered' AND f.crew_id = e.crew_id AND f.derby = e.derby AND f.number = e.entry
        WHERE e.crew_id = @CrewId AND e.derby = @Derby
        """;

    private const string EventsSql = SelectSql + " AND e.number > @After ORDER BY e.number";

    private const string LastSql = "SELECT COALESCE(MAX(number), 0) FROM derby_event WHERE crew_id = @CrewId AND derby = @Derby";

    private const string OfEntrySql = SelectSql + " AND e.entry = @Entry ORDER BY e.number";

    private const string VoidedSql = """
        SELECT c.number AS catch_number, c.voided_at_ms FROM catch_entry c INDEXED BY catch_entry_void
        WHERE c.crew_id = @CrewId AND c.voided_at_ms IS NOT NULL AND EXISTS
            (SELECT 1 FROM derby_entry f WHERE f.crew_id = @CrewId AND f.derby = @Derby AND f.catch_number = c.number)
        """;

    private const string OfCatchSql =
        "SELECT number FROM derby_entry WHERE crew_id = @CrewId AND derby = @Derby AND catch_number = @CatchNumber";

    private const string EntriesSql = "SELECT derby, number AS entry FROM derby_entry WHERE crew_id = @CrewId AND catch_number = @CatchNumber ORDER BY derby";

    private const string OfPhotoSql =
        "SELECT number FROM derby_entry WHERE crew_id = @CrewId AND derby = @Derby AND photo_hash = @PhotoHash";

    private const string CountSql = """
        SELECT COUNT(*) FROM derby_entry f WHERE f.crew_id = @CrewId AND f.derby = @Derby AND f.angler_id = @AnglerId
        """;

    /// <summary>Writes an event at the end of a derby's record.</summary>
    /// <param name="derby">The derby's number.</param>
    /// <param name="write">Makes the event, given its place in the record.</param>
    public async Task AppendAsync(long derby, Func<int, LedgerEvent> write) =>
        await session.ExecuteAsync(AddSql, LedgerRow.Of(session.CrewId, derby, write(await NextAsync(NextSql, derby))));

    /// <summary>Enters a fish.</summary>
    /// <param name="derby">The derby's number.</param>
    /// <param name="write">Makes the event, given its place in the record and the entry's number.</param>
    /// <param name="photoHash">What the photo is known by; null without one.</param>
    /// <returns>The entry's number.</returns>
    public async Task<int> EnterAsync(long derby, Func<int, int, Entered> write, string? photoHash)
    {
        var entered = write(await NextAsync(NextSql, derby), await NextAsync(NextEntrySql, derby));
        await session.ExecuteAsync(AddSql, LedgerRow.Of(session.CrewId, derby, entered));
        await session.ExecuteAsync(AddEntrySql, new
        {
            session.CrewId,
            Derby = derby,
            Number = entered.Entry,
            CatchNumber = entered.Catch,
            AnglerId = entered.Angler,
            entered.Species,
            LengthNm = entered.Measured.Nanometres,
            LengthUnit = StoredUnits.WordOf(entered.Measured),
            WeightNg = entered.Weight?.Nanograms,
            WeightUnit = StoredUnits.WordOf(entered.Weight),
            entered.Water,
            Kept = entered.Kept is { } kept ? kept ? 1 : 0 : (int?)null,
            CaughtAtMs = Instants.Write(entered.CaughtAt),
            OffsetMin = (long)entered.CaughtAt.Offset.TotalMinutes,
            PhotoHash = photoHash,
        });
        return entered.Entry;
    }

    /// <summary>A derby's record, in order.</summary>
    /// <param name="derby">The derby's number.</param>
    /// <param name="after">The event after which it is read; 0 for all of it.</param>
    public async Task<IReadOnlyList<LedgerEvent>> EventsAsync(long derby, int after = 0) =>
        [.. (await session.QueryAsync(EventsSql, new { session.CrewId, Derby = derby, After = after }, LedgerRow.Rows)).Select(row => row.ToEvent())];

    /// <summary>The number of the last event of a derby's record; 0 when it has none.</summary>
    public Task<int> LastAsync(long derby) => session.SingleAsync(LastSql, new { session.CrewId, Derby = derby }, Column.Int);

    /// <summary>What the record says of one entry; null when there is none.</summary>
    public async Task<EntryState?> FindAsync(long derby, int entry) => EntryState.Of(
        (await session.QueryAsync(OfEntrySql, new { session.CrewId, Derby = derby, Entry = entry }, LedgerRow.Rows)).Select(row => row.ToEvent()));

    /// <summary>Since when catches that were entered are void, by their number in the log.</summary>
    public async Task<IReadOnlyDictionary<long, DateTimeOffset>> VoidedAsync(long derby) => new ReadOnlyDictionary<long, DateTimeOffset>(
        (await session.QueryAsync(VoidedSql, new { session.CrewId, Derby = derby }, VoidedRow.Rows))
            .ToDictionary(row => row.CatchNumber, row => Instants.Read(row.VoidedAtMs)));

    /// <summary>The entry of a catch; null when it was not entered.</summary>
    public Task<int?> OfCatchAsync(long derby, long catchNumber) =>
        session.FirstOrDefaultAsync(OfCatchSql, new { session.CrewId, Derby = derby, CatchNumber = catchNumber }, Column.IntOrNull);

    /// <summary>Every entry of a catch: in which derby, and its number there.</summary>
    public async Task<IReadOnlyList<(long Derby, int Entry)>> EntriesAsync(long catchNumber) =>
        [.. (await session.QueryAsync(EntriesSql, new { session.CrewId, CatchNumber = catchNumber }, EntryRow.Rows)).Select(row => (row.Derby, (int)row.Entry))];

    /// <summary>The entry with a photo; null when there is none.</summary>
    public Task<int?> OfPhotoAsync(long derby, string photoHash) =>
        session.FirstOrDefaultAsync(OfPhotoSql, new { session.CrewId, Derby = derby, PhotoHash = photoHash }, Column.IntOrNull);

    /// <summary>How many fish an angler has entered, whatever became of them.</summary>
    public Task<int> CountAsync(long derby, long anglerId) =>
        session.SingleAsync(CountSql, new { session.CrewId, Derby = derby, AnglerId = anglerId }, Column.Int);

    private Task<int> NextAsync(string sql, long derby) => session.SingleAsync(sql, new { session.CrewId, Derby = derby }, Column.Int);

    internal sealed record EntryRow(long Derby, long Entry)
    {
        public static Func<DbDataReader, EntryRow> Rows(DbDataReader reader) => reader.GetRowParser<EntryRow>();
    }

    internal sealed record VoidedRow(long CatchNumber, long VoidedAtMs)
    {
        public static Func<DbDataReader, VoidedRow> Rows(DbDataReader reader) => reader.GetRowParser<VoidedRow>();
    }
}
