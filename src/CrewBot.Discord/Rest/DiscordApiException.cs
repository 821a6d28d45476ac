using System.Net;

namespace CrewBot.Discord.Rest;

/// <summary>A call that was refused or did not come through. Names the route by its template, never a path.</summary>
internal class DiscordApiException : Exception
{
    public DiscordApiException(Route route, HttpStatusCode status, int code, string reason)
        : base($"{route}: {(int)status} {reason}")
    {
        Status = status;
        Code = code;
    }

    public DiscordApiException(Route route, string reason)
        : base($"{route}: {reason}")
    {
    }

    /// <summary>The answer's status; none when no answer came.</summary>
    public HttpStatusCode? Status { get; }

    /// <summary>The platform's own number for the fault, 0 where it gave none.</summary>
    public int Code { get; }
}
