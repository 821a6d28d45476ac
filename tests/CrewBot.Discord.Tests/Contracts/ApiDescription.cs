using System.Text.Json;
using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;
using Json.Schema;

namespace CrewBot.Discord.Tests.Contracts;

/// <summary>
/// The publisher's own description of the API (OpenAPI 3.1, github.com/discord/discord-api-spec, commit 74fda0f), cut down
/// to the calls that the bot makes. It lies beside the repository, not in it; checks against it skip where it is missing.
/// </summary>
internal sealed class ApiDescription
{
    private const string Place = "shared/discord/openapi-subset.json";
    private static readonly Lazy<ApiDescription?> Found = new(Find);

    private readonly JsonObject _document;
    private readonly Dictionary<string, JsonSchema> _schemas = [];
    private readonly Lock _gate = new();

    private ApiDescription(JsonObject document) => _document = document;

    /// <summary>The description, or a visible skip of the running test.</summary>
    public static ApiDescription OrSkip()
    {
        Assert.SkipWhen(Found.Value is null, $"The published API description is not at ../{Place}.");
        return Found.Value!;
    }

    public static ApiDescription? IfThere() => Found.Value;

    /// <summary>Checks the body of a request that was sent; one whose call carries no body must carry none.</summary>
    public void Check(RecordedRequest request)
    {
        var path = TemplateOf(request);
        var operation = _document["paths"]![path]![request.Method.ToLowerInvariant()];
        Assert.True(operation is not null, $"{request.Method} {path} is not a described call.");
        if (operation!["requestBody"] is null)
        {
            Assert.Null(request.Json);
            return;
        }

        var errors = Errors(
            ["paths", path, request.Method.ToLowerInvariant(), "requestBody", "content", "application/json", "schema"],
            request.Json);
        Assert.True(errors.Count == 0, $"{request.Method} {path} {request.Json}: {string.Join("; ", errors)}");
    }

    /// <summary>What is wrong with the value by the schema at that place of the description.</summary>
    private List<string> Errors(string[] pointer, JsonNode? value)
    {
        var element = JsonSerializer.SerializeToElement(value);
        EvaluationResults results;
        lock (_gate)
        {
            results = SchemaAt(pointer).Evaluate(element, new EvaluationOptions { OutputFormat = OutputFormat.List });
        }

        return results.IsValid
            ? []
            : [.. (results.Details ?? [])
                .Where(detail => detail.Errors is not null)
                .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation} {error.Value}"))
                .DefaultIfEmpty("refused")];
    }

    private static ApiDescription? Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "CrewBot.sln")))
            {
                var file = Path.Combine(folder.Parent!.FullName, Place);
                return File.Exists(file)
                    ? new ApiDescription(JsonNode.Parse(File.ReadAllText(file))!.AsObject())
                    : null;
            }
        }

        return null;
    }

    /// <summary>The described path that fits the request's, fixed parts before variable ones.</summary>
    private string TemplateOf(RecordedRequest request)
    {
        var parts = ("/" + request.Path.Split('?')[0]).Split('/');
        var template = _document["paths"]!.AsObject()
            .Select(path => path.Key)
            .Where(path => path.Split('/') is var names
                && names.Length == parts.Length
                && names.Zip(parts).All(pair => pair.First.StartsWith('{') || pair.First == pair.Second))
            .OrderBy(path => path.Count(character => character == '{'))
            .FirstOrDefault();
        Assert.True(template is not null, $"{request.Method} {request.Path} is not a described path.");
        return template!;
    }

    private JsonSchema SchemaAt(string[] pointer)
    {
        var key = string.Join(' ', pointer);
        if (!_schemas.TryGetValue(key, out var schema))
        {
            var root = pointer.Aggregate<string, JsonNode>(_document, static (node, step) => node[step]!).DeepClone();
            root["$defs"] = _document["components"]!["schemas"]!.DeepClone();
            var text = root.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
            var options = new BuildOptions { SchemaRegistry = new SchemaRegistry(), Dialect = Dialect.Draft202012 };
            schema = JsonSchema.FromText(text, options);
            _schemas[key] = schema;
        }

        return schema;
    }
}
