using System.Globalization;

namespace CrewBot.Storage.Outbox;

/// <summary>One thing that the bot says unasked.</summary>
/// <param name="Key">What it is, unique in the crew: said again under the same key it is edited.</param>
/// <param name="Place">Where it is said: a channel or thread, or <c>@</c> and a member's platform id for a direct message.</param>
/// <param name="Body">What it shall say: a reply as JSON.</param>
/// <param name="Revision">Counts what it has been made to say, from 1.</param>
/// <param name="DueAt">When its readers are to see it.</param>
public sealed record Post(string Key, string Place, string Body, long Revision, DateTimeOffset DueAt)
{
    private const string AgainMark = "/again/";

    /// <summary>How it is said.</summary>
    public PostManner Manner { get; init; } = PostManner.Quiet;

    /// <summary>Where it stands; null while nobody has seen it.</summary>
    public PostMessage? Message { get; init; }

    /// <summary>The revision that its readers see; null while nobody has seen it.</summary>
    public long? ShownRevision { get; init; }

    /// <summary>It shall go, or be said no more.</summary>
    public bool IsWithdrawn { get; init; }

    /// <summary>When the pump turns to it next; null when its readers see what they should, or when it was given up.</summary>
    public DateTimeOffset? NextAt { get; init; }

    /// <summary>How often it was tried in vain.</summary>
    public long Attempts { get; init; }

    /// <summary>Why the last attempt failed; null when it did not.</summary>
    public string? Fault { get; init; }

    /// <summary>The same at every attempt, so that a platform shows it once.</summary>
    public required string Nonce { get; init; }

    /// <summary>The first revision that a platform was asked to show; it may show that one even when no answer came.</summary>
    internal long? TriedRevision { get; init; }

    /// <summary>Nobody has been shown it, and it is no longer worth saying.</summary>
    internal bool IsStale(DateTimeOffset now) => TriedRevision is null && Message is null && now > DueAt + Manner.GoodFor;

    /// <summary>The key that it was first said under: what is said again has keys of its own, which start with that.</summary>
    public string FirstKey => Key.IndexOf(AgainMark, StringComparison.Ordinal) is var mark and >= 0 ? Key[..mark] : Key;

    internal long Id { get; init; }

    /// <summary>The key under which it is said the next time.</summary>
    internal string NextKey => Key == FirstKey
        ? $"{Key}{AgainMark}2"
        : string.Create(CultureInfo.InvariantCulture, $"{FirstKey}{AgainMark}{long.Parse(Key.AsSpan(FirstKey.Length + AgainMark.Length), CultureInfo.InvariantCulture) + 1}");
}
