using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Outbox;

/// <summary>What is still to be posted. A message is written with the change that caused it and leaves when it was posted.</summary>
public sealed class OutboxRepository(CrewSession session)
{
    // Discord takes nonces of up to 25 characters.
    private const int NonceLength = 25;

    private const string AddSql = """
        INSERT INTO outbox_message (crew_id, nonce, purpose, body, created_at_ms, due_at_ms)
        VALUES (@CrewId, @Nonce, @Purpose, @Body, @AtMs, @AtMs)
        """;

    private const string DueSql = """
        SELECT id, nonce, purpose, body, attempts FROM outbox_message
        WHERE crew_id = @CrewId AND due_at_ms <= @NowMs ORDER BY due_at_ms, id LIMIT @Most
        """;

    private const string RemoveSql = "DELETE FROM outbox_message WHERE crew_id = @CrewId AND id = @Id";

    private const string PutOffSql = """
        UPDATE outbox_message SET attempts = attempts + 1, due_at_ms = @DueAtMs, fault = @Fault
        WHERE crew_id = @CrewId AND id = @Id
        """;

    private const string DeadSql = """
        SELECT id, purpose, attempts, fault FROM outbox_message
        WHERE crew_id = @CrewId AND due_at_ms IS NULL ORDER BY id
        """;

    /// <summary>Adds a message, to be posted as soon as the change is on the disk.</summary>
    public Task AddAsync(string purpose, string body, DateTimeOffset at)
    {
        var nonce = Guid.NewGuid().ToString("N")[..NonceLength];
        return session.ExecuteAsync(
            AddSql, new { session.CrewId, Nonce = nonce, Purpose = purpose, Body = body, AtMs = at.ToUnixTimeMilliseconds() });
    }

    /// <summary>What is due, oldest first.</summary>
    public Task<IReadOnlyList<OutboxMessage>> DueAsync(DateTimeOffset now, int most) =>
        session.QueryAsync<OutboxMessage>(DueSql, new { session.CrewId, NowMs = now.ToUnixTimeMilliseconds(), Most = most });

    /// <summary>Takes out a message that was posted.</summary>
    public Task RemoveAsync(long id) => session.ExecuteAsync(RemoveSql, new { session.CrewId, Id = id });

    /// <summary>Puts a message off after an attempt in vain.</summary>
    /// <param name="id">The message.</param>
    /// <param name="until">When to try again; null gives it up and keeps it as a dead letter.</param>
    /// <param name="fault">Why the attempt failed.</param>
    public Task PutOffAsync(long id, DateTimeOffset? until, string fault) =>
        session.ExecuteAsync(PutOffSql, new { session.CrewId, Id = id, DueAtMs = until?.ToUnixTimeMilliseconds(), Fault = fault });

    /// <summary>The messages that were given up.</summary>
    public Task<IReadOnlyList<DeadLetter>> DeadAsync() =>
        session.QueryAsync<DeadLetter>(DeadSql, new { session.CrewId });
}
