using System.Text.Json;
using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Catches;

/// <summary>The crew's log of fish.</summary>
public sealed class CatchRepository(CrewSession session)
{
    private const string NextSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM catch_entry WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO catch_entry (crew_id, number, member_id, species, length_nm, length_unit, weight_ng, weight_unit,
            girth_nm, girth_unit, depth_nm, depth_unit, water_id, presentation, lure, mood, line, kept,
            caught_at_ms, offset_min, note, photo, photo_hash, logged_at_ms)
        VALUES (@CrewId, @Number, @MemberId, @Species, @LengthNm, @LengthUnit, @WeightNg, @WeightUnit,
            @GirthNm, @GirthUnit, @DepthNm, @DepthUnit, @WaterId, @Presentation, @Lure, @Mood, @Line, @Kept,
            @CaughtAtMs, @OffsetMin, @Note, @Photo, @PhotoHash, @LoggedAtMs)
        """;

    private const string ReplaceSql = """
        UPDATE catch_entry SET species = @Species, length_nm = @LengthNm, length_unit = @LengthUnit,
            weight_ng = @WeightNg, weight_unit = @WeightUnit, girth_nm = @GirthNm, girth_unit = @GirthUnit,
            depth_nm = @DepthNm, depth_unit = @DepthUnit, water_id = @WaterId, presentation = @Presentation,
            lure = @Lure, mood = @Mood, line = @Line, kept = @Kept, caught_at_ms = @CaughtAtMs,
            offset_min = @OffsetMin, note = @Note, photo = @Photo, photo_hash = @PhotoHash
        WHERE crew_id = @CrewId AND number = @Number
        """;

    private const string VoidSql =
        "UPDATE catch_entry SET voided_at_ms = @AtMs WHERE crew_id = @CrewId AND number = @Number";

    private const string LeaveSpotSql = "DELETE FROM catch_spot WHERE crew_id = @CrewId AND number = @Number";

    private const string AtSpotSql = "INSERT INTO catch_spot (crew_id, number, spot_id) VALUES (@CrewId, @Number, @SpotId)";

    private const string RememberSql = """
        INSERT INTO catch_change (crew_id, number, change, member_id, changed_at_ms, before)
        SELECT @CrewId, @Number, COALESCE(MAX(change), 0) + 1, @MemberId, @AtMs, @Before
        FROM catch_change WHERE crew_id = @CrewId AND number = @Number
        """;

    private const string ChangesSql = "SELECT COUNT(*) FROM catch_change WHERE crew_id = @CrewId AND number = @Number";

    private const string SelectSql = """
        SELECT c.number, c.member_id, m.name AS angler, m.platform_id AS angler_id, w.name AS water, p.spot_id, s.name AS spot, c.species, c.length_nm, c.length_unit,
            c.weight_ng, c.weight_unit, c.girth_nm, c.girth_unit, c.depth_nm, c.depth_unit, c.water_id, c.presentation,
            c.lure, c.mood, c.line, c.kept, c.caught_at_ms, c.offset_min, c.note, c.photo, c.photo_hash, c.logged_at_ms, c.voided_at_ms
        FROM catch_entry c
        JOIN member m ON m.crew_id = c.crew_id AND m.id = c.member_id
        LEFT JOIN water w ON w.crew_id = c.crew_id AND w.id = c.water_id
        LEFT JOIN catch_spot p ON p.crew_id = c.crew_id AND p.number = c.number
        LEFT JOIN spot s ON s.crew_id = p.crew_id AND s.id = p.spot_id
        WHERE c.crew_id = @CrewId
        """;

    private const string FindSql = SelectSql + " AND c.number = @Number";

    private const string FindByPhotoSql =
        SelectSql + " AND (c.photo = @Photo OR c.photo_hash = @PhotoHash) AND c.voided_at_ms IS NULL ORDER BY c.number LIMIT 1";

    // What an entry said before it was corrected may have been another photo.
    private const string PhotoHashesSql = """
        SELECT photo_hash FROM catch_entry WHERE crew_id = @CrewId AND member_id = @MemberId AND photo_hash IS NOT NULL
        UNION
        SELECT json_extract(h.before, '$.PhotoHash') FROM catch_change h
        JOIN catch_entry c ON c.crew_id = h.crew_id AND c.number = h.number
        WHERE h.crew_id = @CrewId AND c.member_id = @MemberId AND json_extract(h.before, '$.PhotoHash') IS NOT NULL
        EXCEPT
        SELECT photo_hash FROM catch_entry WHERE crew_id = @CrewId AND member_id <> @MemberId AND photo_hash IS NOT NULL
        """;

    private const string LastSql =
        SelectSql + " AND c.member_id = @MemberId AND c.voided_at_ms IS NULL ORDER BY c.caught_at_ms DESC, c.number DESC LIMIT 1";

    private const string LastCaughtSql = """
        SELECT c.number, c.species, c.caught_at_ms, w.name, c.depth_nm, c.depth_unit, c.presentation, c.mood
        FROM catch_entry c LEFT JOIN water w ON w.crew_id = c.crew_id AND w.id = c.water_id
        WHERE c.crew_id = @CrewId AND c.member_id = @MemberId AND c.voided_at_ms IS NULL
        ORDER BY c.caught_at_ms DESC, c.number DESC LIMIT 1
        """;

    // Back by number to the first that was logged before; the plus keeps the index of the angler's times out of it.
    private const string NewestOfSql = """
        SELECT number, species, length_nm, weight_ng, logged_at_ms FROM catch_entry
        WHERE crew_id = @CrewId AND +member_id = @MemberId AND voided_at_ms IS NULL AND number > COALESCE(
            (SELECT number FROM catch_entry WHERE crew_id = @CrewId AND logged_at_ms < @SinceMs ORDER BY number DESC LIMIT 1), 0)
        ORDER BY number DESC LIMIT 1
        """;

    private const string KeptSql = """
        SELECT COUNT(*) FROM catch_entry
        WHERE crew_id = @CrewId AND member_id = @MemberId AND caught_at_ms BETWEEN @FromMs AND @ToMs
            AND water_id = @WaterId AND species = @Species AND kept = 1 AND voided_at_ms IS NULL
        """;

    private const string NewestSql = SelectSql + " AND c.voided_at_ms IS NULL ORDER BY c.caught_at_ms DESC, c.number DESC LIMIT @Most";

    private const string NewestOwnSql =
        SelectSql + " AND c.member_id = @MemberId AND c.voided_at_ms IS NULL ORDER BY c.caught_at_ms DESC, c.number DESC LIMIT @Most";

    private const string LongestSql = """
        SELECT t.longest, t.longest_nm, t.longest_at_ms, m.name
        FROM catch_tally t INDEXED BY catch_tally_longest JOIN member m ON m.crew_id = t.crew_id AND m.id = t.member_id
        WHERE t.crew_id = @CrewId AND t.species = @Species AND t.longest_nm IS NOT NULL
        ORDER BY t.longest_nm DESC, t.longest_at_ms, t.longest LIMIT 1
        """;

    // A row a season, of the table itself: the few are quicker compared than sorted.
    private const string LongestOfMemberSql = """
        SELECT t.longest, t.longest_nm, t.longest_at_ms, m.name
        FROM catch_tally t JOIN member m ON m.crew_id = t.crew_id AND m.id = t.member_id
        WHERE t.crew_id = @CrewId AND t.species = @Species AND t.member_id = @MemberId AND t.longest IS NOT NULL
        """;

    private const string LongestOfEachSql = SelectSql + """
         AND c.number IN (SELECT longest FROM catch_tally WHERE crew_id = @CrewId AND member_id = @MemberId AND longest IS NOT NULL)
        ORDER BY c.species, c.length_nm DESC, c.caught_at_ms, c.number
        """;

    private const string AllSql = SelectSql + " ORDER BY c.number";

    private readonly TallyRepository _tallies = new(session);

    /// <summary>Adds a fish.</summary>
    /// <returns>Its number within the crew.</returns>
    public async Task<long> AddAsync(CatchEntry entry)
    {
        var number = await session.SingleAsync(NextSql, new { session.CrewId }, Column.Long);
        await AddAsync(number, entry);
        return number;
    }

    /// <summary>Adds a fish under a number that is free, as another log had it.</summary>
    public async Task AddAsync(long number, CatchEntry entry)
    {
        var row = CatchRow.Of(session.CrewId, number, entry);
        await session.ExecuteAsync(AddSql, row);
        await PutAtSpotAsync(row);
        await _tallies.AddAsync(number, entry);
    }

    /// <summary>Lets an entry no longer count that another log had let go of, without a change of its own.</summary>
    public async Task VoidAsync(long number, DateTimeOffset at)
    {
        await session.ExecuteAsync(VoidSql, new { session.CrewId, Number = number, AtMs = Instants.Write(at) });
        if (await FindAsync(number) is { } gone)
        {
            await _tallies.CountAsync(gone.Entry);
        }
    }

    /// <summary>The whole log by number, void entries among it.</summary>
    public async Task<IReadOnlyList<LoggedCatch>> AllAsync() => Of(await session.QueryAsync(AllSql, new { session.CrewId }, CatchRow.Rows));

    /// <summary>The entry with a number, void or not; null when there is none.</summary>
    public async Task<LoggedCatch?> FindAsync(long number) =>
        (await session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Number = number }, CatchRow.Rows))?.ToCatch();

    /// <summary>The first entry that a photo belongs to, by its reference or by what is in it; null when there is none.</summary>
    public async Task<LoggedCatch?> FindByPhotoAsync(string photo, string? photoHash) =>
        (await session.FirstOrDefaultAsync(FindByPhotoSql, new { session.CrewId, Photo = photo, PhotoHash = photoHash }, CatchRow.Rows))?.ToCatch();

    /// <summary>The hashes of all photos of an angler's fish that are on no fish of anybody else.</summary>
    public Task<IReadOnlyList<string>> PhotoHashesOfAsync(long memberId) =>
        session.QueryAsync(PhotoHashesSql, new { session.CrewId, MemberId = memberId }, Column.Text);

    /// <summary>What an angler caught last.</summary>
    public async Task<LoggedCatch?> LastOfAsync(long memberId) =>
        (await session.FirstOrDefaultAsync(LastSql, new { session.CrewId, MemberId = memberId }, CatchRow.Rows))?.ToCatch();

    /// <summary>What the angler's last fish says of the next one.</summary>
    public async Task<LastCatch?> LastCaughtAsync(long memberId) =>
        await session.ReadAsync(
            LastCaughtSql,
            new { session.CrewId, MemberId = memberId },
            row => new LastCatch(row.GetInt64(0), row.GetString(1), Instants.Read(row.GetInt64(2)))
            {
                Water = row.IsDBNull(3) ? null : row.GetString(3),
                Depth = row.IsDBNull(4) ? null : StoredUnits.LengthOf(row.GetInt64(4), row.GetString(5)),
                Presentation = row.IsDBNull(6) ? null : row.GetString(6),
                Mood = row.IsDBNull(7) ? null : row.GetString(7),
            }) is [var last] ? last : null;

    /// <summary>What an angler logged last, whenever it was caught, among what the crew has logged since an instant; null for nothing.</summary>
    public async Task<NewestCatch?> NewestOfAsync(long memberId, DateTimeOffset since) =>
        await session.ReadAsync(
            NewestOfSql,
            new { session.CrewId, MemberId = memberId, SinceMs = Instants.Write(since) },
            row => new NewestCatch(
                row.GetInt64(0), row.GetString(1), row.IsDBNull(2) ? null : row.GetInt64(2), row.IsDBNull(3) ? null : row.GetInt64(3), Instants.Read(row.GetInt64(4)))) is [var newest] ? newest : null;

    /// <summary>How many fish of a species an angler kept from a water in a span of time, both ends included.</summary>
    public Task<long> KeptAsync(long memberId, string species, long waterId, DateTimeOffset from, DateTimeOffset to) => session.SingleAsync(
        KeptSql,
        new
        {
            session.CrewId,
            MemberId = memberId,
            Species = species,
            WaterId = waterId,
            FromMs = Instants.Write(from),
            ToMs = Instants.Write(to),
        }, Column.Long);

    /// <summary>What was caught last.</summary>
    /// <param name="memberId">By whom; null for the whole crew.</param>
    /// <param name="most">How many.</param>
    public async Task<IReadOnlyList<LoggedCatch>> NewestAsync(long? memberId, int most) =>
        Of(await session.QueryAsync(memberId is null ? NewestSql : NewestOwnSql, new { session.CrewId, MemberId = memberId, Most = most }, CatchRow.Rows));

    /// <summary>The longest of a species, the earlier of two; null when none was measured.</summary>
    /// <param name="species">Key of the species.</param>
    /// <param name="memberId">By whom; null for the whole crew.</param>
    public async Task<LongestCatch?> LongestAsync(string species, long? memberId) =>
        (await session.ReadAsync(
            memberId is null ? LongestSql : LongestOfMemberSql,
            new { session.CrewId, Species = species, MemberId = memberId },
            row => new LongestCatch(row.GetInt64(0), row.GetInt64(1), Instants.Read(row.GetInt64(2)), row.GetString(3))))
        .OrderByDescending(one => one.LengthNm).ThenBy(one => one.CaughtAt).ThenBy(one => one.Number).FirstOrDefault();

    /// <summary>An angler's longest of each species, by species; the earlier of two.</summary>
    public async Task<IReadOnlyList<LoggedCatch>> LongestOfEachAsync(long memberId) =>
        Of([.. (await session.QueryAsync(LongestOfEachSql, new { session.CrewId, MemberId = memberId }, CatchRow.Rows)).DistinctBy(row => row.Species)]);

    /// <summary>Puts a corrected entry in the place of one that was read before; what it said is kept.</summary>
    public async Task ReplaceAsync(LoggedCatch before, CatchEntry entry, long byMember, DateTimeOffset at)
    {
        await RememberAsync(before, byMember, at);
        var row = CatchRow.Of(session.CrewId, before.Number, entry);
        await session.ExecuteAsync(ReplaceSql, row);
        await session.ExecuteAsync(LeaveSpotSql, row);
        await PutAtSpotAsync(row);
        await _tallies.CountAsync(before.Entry);
        await _tallies.CountAsync(entry);
    }

    /// <summary>Lets an entry no longer count; it stays.</summary>
    public async Task VoidAsync(LoggedCatch before, long byMember, DateTimeOffset at)
    {
        await RememberAsync(before, byMember, at);
        await VoidAsync(before.Number, at);
    }

    /// <summary>How often an entry was changed.</summary>
    public Task<long> ChangesAsync(long number) => session.SingleAsync(ChangesSql, new { session.CrewId, Number = number }, Column.Long);

    private Task PutAtSpotAsync(CatchRow row) => row.SpotId is null ? Task.CompletedTask : session.ExecuteAsync(AtSpotSql, row);

    private static IReadOnlyList<LoggedCatch> Of(IReadOnlyList<CatchRow> rows) => [.. rows.Select(row => row.ToCatch())];

    private Task<int> RememberAsync(LoggedCatch before, long byMember, DateTimeOffset at) => session.ExecuteAsync(
        RememberSql,
        new
        {
            session.CrewId,
            before.Number,
            MemberId = byMember,
            AtMs = Instants.Write(at),
            // The angler's name stays in its own table.
            Before = JsonSerializer.Serialize(CatchRow.Of(session.CrewId, before.Number, before.Entry), CatchJson.Default.CatchRow),
        });
}
