using System.Globalization;
using System.Text;
using System.Text.Json;

namespace CrewBot.Discord.Rest;

/// <summary>Flattens a refusal's tree of faults into one line such as <c>embeds[0].title: TOO_LONG ...</c>.</summary>
internal static class ErrorTree
{
    private const string Leaf = "_errors";

    public static string Flatten(JsonElement tree)
    {
        var faults = new List<string>();
        Collect(tree, "", faults);
        return string.Join("; ", faults);
    }

    private static void Collect(JsonElement node, string path, List<string> faults)
    {
        if (node.ValueKind is JsonValueKind.Array)
        {
            faults.AddRange(node.EnumerateArray().Select(fault => Describe(path, fault)));
            return;
        }

        if (node.ValueKind is not JsonValueKind.Object)
        {
            faults.Add(Describe(path, node));
            return;
        }

        foreach (var child in node.EnumerateObject())
        {
            Collect(child.Value, child.Name == Leaf ? path : Join(path, child.Name), faults);
        }
    }

    private static string Join(string path, string name)
    {
        var isIndex = int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out _);
        return isIndex ? $"{path}[{name}]" : path.Length == 0 ? name : $"{path}.{name}";
    }

    private static string Describe(string path, JsonElement fault)
    {
        var line = new StringBuilder(path.Length == 0 ? "request" : path).Append(':');
        if (fault.ValueKind is not JsonValueKind.Object)
        {
            return line.Append(' ').Append(fault.ToString()).ToString();
        }

        foreach (var part in (ReadOnlySpan<string>)["code", "message"])
        {
            if (fault.TryGetProperty(part, out var value))
            {
                line.Append(' ').Append(value.ToString());
            }
        }

        return line.ToString();
    }
}
