using System.Net;

namespace CrewBot.Discord.Rest;

/// <summary>
/// One call of the API: its template, which may be logged, and its path, which may carry a secret and must not be.
/// </summary>
internal sealed record Route(HttpMethod Method, string Template, string Path)
{
    /// <summary>The top-level resource that rate-limit buckets are kept apart by.</summary>
    public string Major { get; init; } = "";

    /// <summary>The path carries an interaction's token: no bot token is sent, and the global limit does not apply.</summary>
    public bool ByInteractionToken { get; init; }

    /// <summary>A first answer: its token serves once, so there is no bucket to wait for.</summary>
    public bool Unbucketed { get; init; }

    public Repetition Repetition { get; init; }

    /// <summary>The refusal that shows, on a repeated call, that an earlier attempt was carried out after all.</summary>
    public Func<HttpStatusCode, int, bool> ProvesDone { get; init; } = static (_, _) => false;

    public override string ToString() => $"{Method} {Template}";
}
