using System.Text.RegularExpressions;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Checks definitions against the documented limits before they are sent: one command too long and the platform takes
/// none of them.
/// </summary>
internal static partial class DefinitionLimits
{
    /// <summary>Every fault, each in a line; none when the platform will take them.</summary>
    public static IReadOnlyList<string> Faults(IReadOnlyList<CommandDefinition> definitions)
    {
        var faults = new List<string>();
        if (definitions.Count(command => command.Type is CommandType.Slash) > Limits.SlashCommands
            || definitions.Count(command => command.Type is CommandType.Message) > Limits.MenuCommands
            || definitions.Count(command => command.Type is CommandType.User) > Limits.MenuCommands)
        {
            faults.Add("there are too many commands");
        }

        foreach (var command in definitions)
        {
            CheckName(command.Name, command.Type is CommandType.Slash, faults);
            if (command.Type is CommandType.Slash)
            {
                CheckDescription(command.Name, command.Description, faults);
                CheckOptions(command.Name, command.Options ?? [], faults);
            }

            if (Length(command) is > Limits.WholeCommand and var length)
            {
                faults.Add($"/{command.Name} is {length} characters in all, more than {Limits.WholeCommand}");
            }
        }

        return faults;
    }

    private static void CheckOptions(string path, IReadOnlyList<CommandOptionDefinition> options, List<string> faults)
    {
        if (options.Count > Limits.OptionsOnALevel)
        {
            faults.Add($"/{path} has {options.Count} options, more than {Limits.OptionsOnALevel}");
        }

        if (options.Select(option => option.Name).Distinct().Count() < options.Count)
        {
            faults.Add($"/{path} has two options of one name");
        }

        if (options.SkipWhile(option => option.Required is true).Any(option => option.Required is true))
        {
            faults.Add($"/{path} has a required option after an optional one");
        }

        foreach (var option in options)
        {
            var place = $"{path} {option.Name}";
            CheckName(option.Name, lowerCase: true, faults);
            CheckDescription(place, option.Description, faults);
            CheckChoices(place, option, faults);
            CheckOptions(place, option.Options ?? [], faults);
        }
    }

    private static void CheckChoices(string place, CommandOptionDefinition option, List<string> faults)
    {
        var choices = option.Choices ?? [];
        if (choices.Count > Limits.Choices
            || choices.Any(choice => choice.Name.Length is 0 or > Limits.ChoiceText || choice.Value.Length > Limits.ChoiceText)
            || (choices.Count > 0 && option.Autocomplete is true))
        {
            faults.Add($"/{place} has choices that do not fit");
        }
    }

    private static void CheckName(string name, bool lowerCase, List<string> faults)
    {
        var fits = lowerCase
            ? LowerCaseName().IsMatch(name) && !name.Any(char.IsUpper)
            : name.Length is > 0 and <= Limits.CommandName;
        if (!fits)
        {
            faults.Add($"'{name}' is no name that the platform takes");
        }
    }

    private static void CheckDescription(string place, string? description, List<string> faults)
    {
        if (description is not { Length: > 0 and <= Limits.Description })
        {
            faults.Add($"the description of /{place} is missing or longer than {Limits.Description}");
        }
    }

    /// <summary>Names, descriptions and values; of a text in several languages only the longest counts.</summary>
    private static int Length(CommandDefinition command) =>
        command.Name.Length + Longest(command.Description, command.DescriptionLocalizations)
        + (command.Options ?? []).Sum(Length);

    private static int Length(CommandOptionDefinition option) =>
        option.Name.Length + Longest(option.Description, option.DescriptionLocalizations)
        + (option.Choices ?? []).Sum(choice => choice.Name.Length + choice.Value.Length)
        + (option.Options ?? []).Sum(Length);

    private static int Longest(string? text, IReadOnlyDictionary<string, string>? others) =>
        Math.Max(text?.Length ?? 0, others?.Values.Max(other => other.Length) ?? 0);

    [GeneratedRegex(@"^[-_'\p{L}\p{N}]{1,32}$")]
    private static partial Regex LowerCaseName();
}
