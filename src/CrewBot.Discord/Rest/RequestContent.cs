using System.Globalization;
using System.Net.Http.Headers;

namespace CrewBot.Discord.Rest;

/// <summary>Builds the body, anew for each attempt because sending consumes it.</summary>
internal static class RequestContent
{
    private static readonly MediaTypeHeaderValue Json = new("application/json");

    public static HttpContent? Of(RestRequest request)
    {
        if (request.Files.Count == 0)
        {
            return request.Json.IsEmpty ? null : JsonContent(request.Json);
        }

        var form = new MultipartFormDataContent { { JsonContent(request.Json), "payload_json" } };
        for (var index = 0; index < request.Files.Count; index++)
        {
            var file = request.Files[index];
            var content = new ReadOnlyMemoryContent(file.Content);
            content.Headers.ContentType = new MediaTypeHeaderValue(file.ContentType);
            form.Add(content, string.Create(CultureInfo.InvariantCulture, $"files[{index}]"), file.Name);
        }

        return form;
    }

    private static ReadOnlyMemoryContent JsonContent(ReadOnlyMemory<byte> json) =>
        new(json) { Headers = { ContentType = Json } };
}
