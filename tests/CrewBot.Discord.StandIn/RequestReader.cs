using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;

namespace CrewBot.Discord.StandIn;

/// <summary>Takes a request down, multipart bodies part by part.</summary>
internal static class RequestReader
{
    public static async Task<RecordedRequest> ReadAsync(HttpContext context, string path, long at)
    {
        var headers = context.Request.Headers.ToDictionary(
            header => header.Key, header => header.Value.ToString(), StringComparer.OrdinalIgnoreCase);
        JsonNode? json = null;
        List<RecordedFile> files = [];
        if (MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var type))
        {
            if (type.MediaType.Equals("multipart/form-data", StringComparison.OrdinalIgnoreCase))
            {
                json = await ReadPartsAsync(context.Request.Body, type.Boundary.ToString().Trim('"'), files);
            }
            else if (type.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase))
            {
                json = await JsonNode.ParseAsync(context.Request.Body);
            }
        }

        return new RecordedRequest(context.Request.Method, path, headers, json, files, at);
    }

    private static async Task<JsonNode?> ReadPartsAsync(Stream body, string boundary, List<RecordedFile> files)
    {
        JsonNode? json = null;
        var reader = new MultipartReader(boundary, body);
        while (await reader.ReadNextSectionAsync() is { } section)
        {
            using var content = new MemoryStream();
            await section.Body.CopyToAsync(content);
            if (section.ContentDisposition?.Contains("payload_json", StringComparison.Ordinal) is true)
            {
                json = JsonSerializer.Deserialize<JsonNode>(content.ToArray());
            }
            else
            {
                files.Add(new RecordedFile(section.ContentDisposition ?? "", section.ContentType, content.ToArray()));
            }
        }

        return json;
    }
}
