using System.Globalization;
using System.Net;

namespace CrewBot.Discord.Rest;

/// <summary>A call that was refused or did not come through. Names the route by its template, never a path.</summary>
internal sealed class DiscordApiException : Exception
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

    private DiscordApiException(Route route, TimeSpan wait)
        : base(string.Create(
            CultureInfo.InvariantCulture,
            $"{route}: limited for another {wait.TotalSeconds:0.###} s, longer than the call can wait")) => Wait = wait;

    /// <summary>How long the call would have to wait; none when waiting is not what it lacks.</summary>
    public TimeSpan? Wait { get; }

    /// <summary>The answer's status; none when no answer came.</summary>
    public HttpStatusCode? Status { get; }

    /// <summary>The platform's own number for the fault, 0 where it gave none.</summary>
    public int Code { get; }

    /// <summary>The call would have to wait longer than its caller can.</summary>
    public static DiscordApiException Limited(Route route, TimeSpan wait) => new(route, wait);
}
