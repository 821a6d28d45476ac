using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Rest;

/// <summary>Reads bodies that may be JSON, a web page, cut short or missing.</summary>
internal static class ResponseReader
{
    private const int ShownCharacters = 200;

    public static bool IsJson(HttpResponseMessage response) =>
        response.Content.Headers.ContentType?.MediaType?.EndsWith("json", StringComparison.OrdinalIgnoreCase) is true;

    /// <summary>Reads JSON of the shape; null when the body is anything else.</summary>
    public static T? TryRead<T>(HttpResponseMessage response, ReadOnlySpan<byte> body, JsonTypeInfo<T> shape)
        where T : class
    {
        if (!IsJson(response))
        {
            return null;
        }

        try
        {
            return JsonSerializer.Deserialize(body, shape);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Makes the exception for a refusal, from whatever the body turns out to be.</summary>
    public static DiscordApiException Refusal(Route route, HttpResponseMessage response, ReadOnlySpan<byte> body)
    {
        if (TryRead(response, body, WireJson.Default.ErrorBody) is { } error)
        {
            var reason = new StringBuilder(error.Message ?? "no reason given");
            if (error.Errors is { } tree)
            {
                reason.Append(" (").Append(ErrorTree.Flatten(tree)).Append(')');
            }

            return new DiscordApiException(route, response.StatusCode, error.Code ?? 0, reason.ToString());
        }

        return new DiscordApiException(route, response.StatusCode, code: 0, NotJson(response, body));
    }

    /// <summary>Describes a body that should have been JSON by its kind, its edge's mark and its beginning.</summary>
    public static string NotJson(HttpResponseMessage response, ReadOnlySpan<byte> body)
    {
        var kind = response.Content.Headers.ContentType?.MediaType ?? "no content type";
        var ray = response.Headers.NonValidated.TryGetValues("cf-ray", out var mark) ? $", cf-ray {mark}" : "";
        var text = Encoding.UTF8.GetString(body[..Math.Min(body.Length, ShownCharacters)]);
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return $"unreadable body ({kind}{ray}): {(line.Length == 0 ? "empty" : line)}";
    }
}
