using System.Data.Common;
using Dapper;

namespace CrewBot.Storage.Outbox;

/// <summary>A post as it stands in its table.</summary>
internal sealed record PostRow(
    long Id,
    string Key,
    string Place,
    string Body,
    long Revision,
    long Notifies,
    string? LateLine,
    long? GoodForMs,
    long GapMs,
    long? AgainMs,
    long Withdrawn,
    long DueAtMs,
    long? NextAtMs,
    string Nonce,
    long? TriedRevision,
    long? ShownRevision,
    long? ShownAtMs,
    string? MessagePlace,
    string? MessageId,
    long Attempts,
    string? Fault)
{
    public static Func<DbDataReader, PostRow> Rows(DbDataReader reader) => reader.GetRowParser<PostRow>();

    /// <summary>Its readers see what they should.</summary>
    public bool IsSettled => NextAtMs is null && Fault is null;

    public Post ToPost() => new(Key, Place, Body, Revision, Instants.Read(DueAtMs))
    {
        Id = Id,
        Nonce = Nonce,
        Manner = new PostManner { Notifies = Notifies != 0, LateLine = LateLine, GoodFor = SpanOf(GoodForMs), Gap = TimeSpan.FromMilliseconds(GapMs), Again = SpanOf(AgainMs) },
        IsWithdrawn = Withdrawn != 0,
        NextAt = NextAtMs is { } next ? Instants.Read(next) : null,
        TriedRevision = TriedRevision,
        ShownRevision = ShownRevision,
        Message = MessageId is null ? null : new PostMessage(MessagePlace!, MessageId),
        Attempts = Attempts,
        Fault = Fault,
    };

    private static TimeSpan? SpanOf(long? milliseconds) => milliseconds is { } span ? TimeSpan.FromMilliseconds(span) : null;
}
