using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Privacy;

/// <summary>
/// Takes a person's name out of what was said: as a word of its own, in the spelling they used. Cautions name nobody and
/// stay as they are; so does a name without a letter, which can't be told from a measurement.
/// </summary>
/// <param name="name">What the person is called.</param>
/// <param name="others">Names of other people and of places: they stay, even where they hold this one.</param>
public sealed class NameTaken(string name, IEnumerable<string> others)
{
    private const string Before = @"(?<![\p{L}\p{N}-])";
    private const string After = @"(?![\p{L}\p{N}-])";

    private readonly Regex? _mention = name.Any(char.IsLetter)
        ? new Regex($"{Before}(?:{string.Join('|', Names(name, others).Select(Regex.Escape))}){After}", RegexOptions.CultureInvariant)
        : null;

    private readonly bool _isShared = others.Contains(name);

    /// <summary>A reply without the name.</summary>
    public Reply OutOf(Reply reply) => reply with
    {
        Headline = OutOf(reply.Headline),
        Lines = OutOf(reply.Lines),
        Struck = OutOf(reply.Struck),
        Reasons = OutOf(reply.Reasons),
        Pictures = [.. reply.Pictures.Select(picture => picture with { AlternativeText = OutOf(picture.AlternativeText) })],
        Actions = [.. reply.Actions.Select(action => action.Reworded(OutOf))],
        Choices = [.. reply.Choices.Select(choice => choice with { Prompt = OutOf(choice.Prompt), Choices = [.. choice.Choices.Select(action => action.Reworded(OutOf))] })],
    };

    /// <summary>A text without the name.</summary>
    public string OutOf(string text) => _mention is null || _isShared
        ? text
        : _mention.Replace(text, found => found.Value == name ? MemberRepository.Former : found.Value);

    private string[] OutOf(IReadOnlyList<string> lines) => [.. lines.Select(OutOf)];

    // The longest first, so that "Ana Bay" is found before the "Ana" in it.
    private static IEnumerable<string> Names(string name, IEnumerable<string> others) =>
        others.Where(other => other != name && other.Contains(name, StringComparison.Ordinal)).Distinct().OrderByDescending(other => other.Length).Append(name);
}
