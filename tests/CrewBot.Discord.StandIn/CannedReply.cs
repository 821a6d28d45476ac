namespace CrewBot.Discord.StandIn;

/// <summary>What a request is answered with instead of the usual.</summary>
public sealed record CannedReply(int Status)
{
    public string? Body { get; init; }
    public string ContentType { get; init; } = "application/json";
    public IReadOnlyDictionary<string, string> Headers { get; init; } = new Dictionary<string, string>();

    /// <summary>Carries the call out as usual before answering like this.</summary>
    public bool CarriedOut { get; init; }

    /// <summary>Cuts the connection instead of answering.</summary>
    public bool Cut { get; init; }

    /// <summary>Answers only after this time.</summary>
    public TimeSpan Delay { get; init; }

    /// <summary>Never answers: holds the request until its client goes away.</summary>
    public bool Silent { get; init; }

    public static CannedReply Limited(double seconds, bool global = false, string scope = "user") => new(429)
    {
        Body = FormattableString.Invariant(
            $$"""{"message":"You are being rate limited.","retry_after":{{seconds}},"global":{{(global ? "true" : "false")}}}"""),
        Headers = new Dictionary<string, string>
        {
            ["Retry-After"] = FormattableString.Invariant($"{Math.Ceiling(seconds)}"),
            ["X-RateLimit-Scope"] = global ? "global" : scope,
        },
    };

    public static CannedReply WebPage(int status) => new(status)
    {
        Body = "<!DOCTYPE html><html><body>The edge says no.</body></html>",
        ContentType = "text/html; charset=utf-8",
    };

    public static CannedReply Refusal(int status, int code, string message) => new(status)
    {
        Body = $$"""{"message":"{{message}}","code":{{code}}}""",
    };
}
