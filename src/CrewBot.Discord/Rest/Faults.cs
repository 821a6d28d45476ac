using System.Net;

namespace CrewBot.Discord.Rest;

/// <summary>Which failures passed before anything ran, and which are worth another attempt.</summary>
internal static class Faults
{
    /// <summary>The platform's gateways answer 502 and 503 without having carried the call out.</summary>
    public static bool CertainlyDidNotRun(HttpStatusCode status) =>
        status is HttpStatusCode.BadGateway or HttpStatusCode.ServiceUnavailable;

    public static bool IsPassing(HttpStatusCode status) =>
        status is HttpStatusCode.InternalServerError or HttpStatusCode.GatewayTimeout || CertainlyDidNotRun(status);

    /// <summary>No connection came about, so no request was sent.</summary>
    public static bool CertainlyDidNotRun(HttpRequestException fault) =>
        fault.HttpRequestError is HttpRequestError.ConnectionError
            or HttpRequestError.NameResolutionError
            or HttpRequestError.SecureConnectionError
            or HttpRequestError.ProxyTunnelError;

    /// <summary>A few words for a log; the exception's own text could be long.</summary>
    public static string Describe(HttpRequestException fault) => fault.HttpRequestError switch
    {
        HttpRequestError.NameResolutionError => "the server's name could not be resolved",
        HttpRequestError.ConnectionError => "the server could not be reached",
        HttpRequestError.SecureConnectionError => "no trusted TLS connection",
        HttpRequestError.ResponseEnded => "the connection broke before the answer was complete",
        var other => $"the connection failed ({other})",
    };
}
