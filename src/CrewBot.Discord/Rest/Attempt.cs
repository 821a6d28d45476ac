namespace CrewBot.Discord.Rest;

/// <summary>How one attempt went: it succeeded, or failed and may or may not be tried again.</summary>
internal readonly record struct Attempt
{
    private Attempt(ReadOnlyMemory<byte> body, DiscordApiException? failure, bool again, TimeSpan? after)
    {
        Body = body;
        Failure = failure;
        Again = again;
        After = after;
    }

    public ReadOnlyMemory<byte> Body { get; }
    public DiscordApiException? Failure { get; }

    /// <summary>Another attempt is safe and may help.</summary>
    public bool Again { get; }

    /// <summary>The wait that the server asked for; null leaves it to the back-off.</summary>
    public TimeSpan? After { get; }

    public static Attempt Done(ReadOnlyMemory<byte> body) => new(body, null, again: false, after: null);

    public static Attempt Failed(DiscordApiException failure) => new(default, failure, again: false, after: null);

    public static Attempt Retry(DiscordApiException failure, TimeSpan? after = null) =>
        new(default, failure, again: true, after);
}
