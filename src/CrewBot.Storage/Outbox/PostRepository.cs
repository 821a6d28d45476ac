using System.Diagnostics.CodeAnalysis;
using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Outbox;

/// <summary>
/// What the bot says unasked. Said with the change that causes it, in its transaction; the pump then brings the readers
/// what stands here, and only the latest of it.
/// </summary>
public sealed class PostRepository(CrewSession session)
{
    // Discord takes nonces of up to 25 characters.
    private const int NonceLength = 25;

    private const string Columns = """
        id, key, place, body, revision, notifies, late_line, good_for_ms, gap_ms, again_ms, withdrawn, due_at_ms, next_at_ms, nonce,
        tried_revision, shown_revision, shown_at_ms, message_place, message_id, attempts, fault
        """;

    private const string FindSql = $"SELECT {Columns} FROM post WHERE crew_id = @CrewId AND key = @Key";

    private const string PendingSql =
        $"SELECT {Columns} FROM post WHERE crew_id = @CrewId AND next_at_ms IS NOT NULL ORDER BY due_at_ms, id";

    private const string DeadSql = $"""
        SELECT {Columns} FROM post WHERE crew_id = @CrewId AND next_at_ms IS NULL AND fault IS NOT NULL ORDER BY due_at_ms, id
        """;

    private const string FirstDueSql = $"""
        SELECT {Columns} FROM post WHERE crew_id = @CrewId AND place = @Place AND next_at_ms <= @NowMs
        ORDER BY due_at_ms, id LIMIT 1
        """;

    // What follows a post that failed waits behind it.
    private const string HeldUntilSql =
        "SELECT MAX(next_at_ms) FROM post WHERE crew_id = @CrewId AND place = @Place AND attempts > 0 AND next_at_ms IS NOT NULL";

    private const string AddSql = """
        INSERT INTO post (crew_id, key, place, body, notifies, late_line, good_for_ms, gap_ms, again_ms, due_at_ms, next_at_ms, nonce)
        VALUES (@CrewId, @Key, @Place, @Body, @Notifies, @LateLine, @GoodForMs, @GapMs, @AgainMs, @DueAtMs, @NextAtMs, @Nonce)
        """;

    private const string ReplaceSql = """
        UPDATE post SET place = @Place, body = @Body, revision = revision + 1, notifies = @Notifies, late_line = @LateLine,
            good_for_ms = @GoodForMs, gap_ms = @GapMs, again_ms = @AgainMs, withdrawn = 0, due_at_ms = @DueAtMs, next_at_ms = @NextAtMs, attempts = @Attempts, fault = @Fault
        WHERE crew_id = @CrewId AND id = @Id
        """;

    private const string WithdrawSql = """
        UPDATE post SET withdrawn = 1, next_at_ms = COALESCE(next_at_ms, shown_at_ms), due_at_ms = COALESCE(shown_at_ms, due_at_ms),
            attempts = CASE WHEN next_at_ms IS NULL THEN 0 ELSE attempts END
        WHERE crew_id = @CrewId AND id = @Id
        """;

    private const string UnderSql =
        $"SELECT {Columns} FROM post WHERE crew_id = @CrewId AND key >= @From AND key < @Until ORDER BY key";

    private const string ThatSaySql = $"SELECT {Columns} FROM post WHERE crew_id = @CrewId AND instr(body, @Words) > 0 ORDER BY id";

    // What stands somewhere is edited there, even if the last edit was given up; a dead letter that nobody saw stays dead.
    private const string RewordSql = """
        UPDATE post SET body = @Body, revision = revision + 1,
            attempts = CASE WHEN next_at_ms IS NULL AND message_id IS NOT NULL THEN 0 ELSE attempts END,
            fault = CASE WHEN next_at_ms IS NULL AND message_id IS NOT NULL THEN NULL ELSE fault END,
            next_at_ms = CASE WHEN next_at_ms IS NULL AND message_id IS NOT NULL THEN @AtMs ELSE next_at_ms END
        WHERE crew_id = @CrewId AND id = @Id
        """;

    // What was taken back or said otherwise meanwhile is not said again.
    private const string AgainSql = """
        INSERT INTO post (crew_id, key, place, body, notifies, late_line, good_for_ms, gap_ms, again_ms, due_at_ms, next_at_ms, nonce)
        SELECT crew_id, @Key, place, body, notifies, late_line, good_for_ms, gap_ms, again_ms, @DueAtMs, @DueAtMs, @Nonce FROM post
        WHERE crew_id = @CrewId AND id = @Id AND again_ms IS NOT NULL AND withdrawn = 0
        ON CONFLICT (crew_id, key) DO NOTHING
        """;

    private const string RemoveSql = "DELETE FROM post WHERE crew_id = @CrewId AND id = @Id";

    private const string TriedSql =
        "UPDATE post SET tried_revision = @Revision WHERE crew_id = @CrewId AND id = @Id AND tried_revision IS NULL";

    private const string ShownSql = """
        UPDATE post SET message_place = @MessagePlace, message_id = @MessageId, shown_revision = @Revision, shown_at_ms = @AtMs,
            attempts = 0, fault = NULL,
            next_at_ms = CASE
                WHEN withdrawn = 1 THEN @AtMs
                WHEN revision > @Revision AND due_at_ms > @AtMs + gap_ms THEN due_at_ms
                WHEN revision > @Revision THEN @AtMs + gap_ms
            END
        WHERE crew_id = @CrewId AND id = @Id
        """;

    private const string FailedSql =
        "UPDATE post SET attempts = attempts + 1, next_at_ms = @NextAtMs, fault = @Fault WHERE crew_id = @CrewId AND id = @Id";

    private const string HoldSql =
        "UPDATE post SET next_at_ms = @UntilMs WHERE crew_id = @CrewId AND place = @Place AND next_at_ms < @UntilMs";

    private const string ForgetSql =
        "DELETE FROM post WHERE crew_id = @CrewId AND next_at_ms IS NULL AND due_at_ms < @BeforeMs AND COALESCE(shown_at_ms, 0) < @BeforeMs";

    /// <summary>How long a post is kept after it was shown or given up; said again later it is a new message.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(400);

    /// <summary>Says something, or makes what was said under the key say something else. Never makes a second message.</summary>
    /// <param name="key">What it is, such as <c>derby/7/standings</c>.</param>
    /// <param name="place">Where: a channel or thread, or <c>@</c> and a member's platform id. What stands somewhere stays there.</param>
    /// <param name="body">What: a reply as JSON.</param>
    /// <param name="due">When: the request's instant for at once, a later one for a reminder.</param>
    /// <param name="manner">How; quietly when left out.</param>
    public async Task SayAsync(string key, string place, string body, DateTimeOffset due, PostManner? manner = null)
    {
        manner ??= PostManner.Quiet;
        var said = await RowAsync(key);
        if (said is not null && said.Body == body && said.IsSettled)
        {
            return;
        }

        var isKnownThere = said?.TriedRevision is not null;
        place = isKnownThere ? said!.Place : place;
        var dueMs = Instants.Write(due);
        var next = Math.Max(dueMs, await session.FirstOrDefaultAsync(HeldUntilSql, new { session.CrewId, Place = place }, Column.LongOrNull) ?? dueMs);
        next = said?.ShownAtMs is { } shown ? Math.Max(next, shown + (long)manner.Gap.TotalMilliseconds) : next;
        await session.ExecuteAsync(said is null ? AddSql : ReplaceSql, new
        {
            session.CrewId,
            said?.Id,
            Key = key,
            Place = place,
            Body = body,
            manner.Notifies,
            manner.LateLine,
            GoodForMs = (long?)manner.GoodFor?.TotalMilliseconds,
            GapMs = (long)manner.Gap.TotalMilliseconds,
            AgainMs = (long?)manner.Again?.TotalMilliseconds,
            DueAtMs = dueMs,
            NextAtMs = next,
            Nonce = NewNonce(),

            // One that was given up gets a new chance.
            Attempts = said?.NextAtMs is null ? 0 : said.Attempts,
            Fault = said?.NextAtMs is null ? null : said.Fault,
        });
        session.RingAfterwards();
    }

    /// <summary>Takes back what was said, or says it no more; a key that nothing was said under is no fault.</summary>
    public async Task TakeBackAsync(string key)
    {
        if (await RowAsync(key) is not { } said)
        {
            return;
        }

        // What no platform was asked to show, or would not, needs no taking back.
        var mayBeSeen = said.MessageId is not null || (said.TriedRevision is not null && said.NextAtMs is not null);
        await session.ExecuteAsync(mayBeSeen ? WithdrawSql : RemoveSql, new { session.CrewId, said.Id });
        session.RingAfterwards();
    }

    /// <summary>What was said under a key; null for nothing.</summary>
    public async Task<Post?> FindAsync(string key) => (await RowAsync(key))?.ToPost();

    /// <summary>What was said under keys that start so, whatever became of it; in the order of the keys.</summary>
    /// <param name="prefix">The start of the keys, such as <c>trip/7/</c>.</param>
    public Task<IReadOnlyList<Post>> UnderAsync(string prefix) =>
        PostsAsync(UnderSql, new { session.CrewId, From = prefix, Until = $"{prefix[..^1]}{(char)(prefix[^1] + 1)}" });

    /// <summary>Every post that holds these words, whatever became of it.</summary>
    /// <param name="words">As a post's JSON writes them.</param>
    public Task<IReadOnlyList<Post>> ThatSayAsync(string words) => PostsAsync(ThatSaySql, new { session.CrewId, Words = words });

    /// <summary>Says a post in other words: what waits still waits, what stands is edited, and nothing is said that was not.</summary>
    public async Task RewordAsync(Post post, string body, DateTimeOffset at)
    {
        await session.ExecuteAsync(RewordSql, new { session.CrewId, post.Id, Body = body, AtMs = Instants.Write(at) });
        session.RingAfterwards();
    }

    /// <summary>What its readers do not see yet, reminders for later days included; oldest first.</summary>
    public Task<IReadOnlyList<Post>> PendingAsync() => PostsAsync(PendingSql, new { session.CrewId });

    /// <summary>What was given up, oldest first: a dead letter gets a new chance when it is said again.</summary>
    public Task<IReadOnlyList<Post>> DeadAsync() => PostsAsync(DeadSql, new { session.CrewId });

    /// <summary>Forgets what was shown or given up before an instant.</summary>
    public Task ForgetAsync(DateTimeOffset before) =>
        session.ExecuteAsync(ForgetSql, new { session.CrewId, BeforeMs = Instants.Write(before) });

    /// <summary>The first that is to be brought to a place now.</summary>
    internal async Task<Post?> FirstDueAsync(string place, DateTimeOffset now) =>
        (await session.FirstOrDefaultAsync(FirstDueSql, new { session.CrewId, Place = place, NowMs = Instants.Write(now) }, PostRow.Rows))?.ToPost();

    /// <summary>Notes that a platform is about to be asked to show a post for the first time.</summary>
    internal Task TriedAsync(Post post) => session.ExecuteAsync(TriedSql, new { session.CrewId, post.Id, post.Revision });

    /// <summary>Notes what its readers see.</summary>
    internal async Task ShownAsync(Post post, PostMessage message, long revision, DateTimeOffset at)
    {
        await session.ExecuteAsync(
            ShownSql,
            new { session.CrewId, post.Id, MessagePlace = message.Place, MessageId = message.Id, Revision = revision, AtMs = Instants.Write(at) });
        await SayAgainAsync(post, at);
    }

    /// <summary>Removes what was taken back.</summary>
    internal Task RemoveAsync(Post post) => session.ExecuteAsync(RemoveSql, new { session.CrewId, post.Id });

    /// <summary>Gives a post up; what is to be said again gets its next chance at its next time.</summary>
    internal async Task GiveUpAsync(Post post, string fault, DateTimeOffset at)
    {
        await session.ExecuteAsync(FailedSql, new { session.CrewId, post.Id, NextAtMs = (long?)null, Fault = fault });
        await SayAgainAsync(post, at);
    }

    /// <summary>Puts a post off, and with it all that follows it in its place.</summary>
    internal async Task PutOffAsync(Post post, DateTimeOffset until, string fault)
    {
        await session.ExecuteAsync(FailedSql, new { session.CrewId, post.Id, NextAtMs = Instants.Write(until), Fault = fault });
        await session.ExecuteAsync(HoldSql, new { session.CrewId, post.Place, UntilMs = Instants.Write(until) });
    }

    private async Task SayAgainAsync(Post post, DateTimeOffset at)
    {
        if (post.Manner.Again is not { } again)
        {
            return;
        }

        var rounds = Math.Max(1, (long)Math.Floor((at - post.DueAt) / again) + 1);
        await session.ExecuteAsync(
            AgainSql, new { session.CrewId, post.Id, Key = post.NextKey, DueAtMs = Instants.Write(post.DueAt + (rounds * again)), Nonce = NewNonce() });
        session.RingAfterwards();
    }

    private Task<PostRow?> RowAsync(string key) => session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Key = key }, PostRow.Rows);

    private static string NewNonce() => Guid.NewGuid().ToString("N")[..NonceLength];

    private async Task<IReadOnlyList<Post>> PostsAsync<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
        where TParameters : class =>
        [.. (await session.QueryAsync(sql, parameters, PostRow.Rows)).Select(row => row.ToPost())];
}
