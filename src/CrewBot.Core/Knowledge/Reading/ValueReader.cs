using System.Text.Json;
using System.Text.Json.Nodes;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads single values; one that does not fit is noted and comes out as nothing.</summary>
internal static class ValueReader
{
    public static string Text(StatedValue stated)
    {
        if (stated.Node is JsonValue value && value.TryGetValue<string>(out var text))
        {
            return text;
        }

        stated.Refuse("Write text in quotes.");
        return "";
    }

    public static double Number(StatedValue stated)
    {
        if (stated.Node is JsonValue value && value.TryGetValue<double>(out var number) && double.IsFinite(number))
        {
            return number;
        }

        stated.Refuse("Write a number, without quotes.");
        return 0;
    }

    public static int Whole(StatedValue stated)
    {
        if (stated.Node is JsonValue value && value.TryGetValue<int>(out var number))
        {
            return number;
        }

        stated.Refuse("Write a whole number, without quotes.");
        return 0;
    }

    public static bool Flag(StatedValue stated)
    {
        if (stated.Node is JsonValue value && value.TryGetValue<bool>(out var flag))
        {
            return flag;
        }

        stated.Refuse("Write true or false, without quotes.");
        return false;
    }

    /// <summary>One of a few fixed names, in lower case with hyphens, such as <c>live-fish</c>.</summary>
    public static T Name<T>(StatedValue stated)
        where T : struct, Enum => NameOf<T>(Plain(stated), stated);

    /// <summary>The same, where the text is already at hand.</summary>
    public static T NameOf<T>(string text, StatedValue stated)
        where T : struct, Enum
    {
        var names = Array.ConvertAll(Enum.GetNames<T>(), JsonNamingPolicy.KebabCaseLower.ConvertName);
        var place = Array.IndexOf(names, text);
        if (place >= 0)
        {
            return Enum.GetValues<T>()[place];
        }

        stated.Refuse($"'{text}' is not one of: {string.Join(", ", names)}.");
        return default;
    }

    /// <summary>The text, or none when it is something else.</summary>
    public static string Plain(StatedValue stated) =>
        stated.Node is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";
}
