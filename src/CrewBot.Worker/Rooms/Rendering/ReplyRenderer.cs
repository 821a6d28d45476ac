using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using Spectre.Console;

namespace CrewBot.Worker.Rooms.Rendering;

/// <summary>Writes replies to a terminal, a pipe or a file.</summary>
internal sealed partial class ReplyRenderer(IAnsiConsole console)
{
    private static readonly Style Strong = new(decoration: Decoration.Bold);
    private static readonly Style Gone = new(decoration: Decoration.Strikethrough);
    private static readonly Style Warning = new(Color.Yellow, decoration: Decoration.Bold);

    /// <summary>Writes an answer, its buttons numbered when there is someone to press them.</summary>
    public void Write(Reply reply, bool withActions)
    {
        Write("", SafeText.Of(reply.Headline), Strong);
        foreach (var line in reply.Struck)
        {
            Write("No longer:", SafeText.Of(line), Gone);
        }

        foreach (var line in reply.Lines)
        {
            var safe = SafeText.Of(line);
            var label = Label().Match(safe).Value;
            Write(label, safe[label.Length..], Style.Plain);
        }

        foreach (var caution in reply.Cautions)
        {
            Write("Caution:", SafeText.Of(caution), Style.Plain, Warning);
        }

        if (withActions)
        {
            WriteOffers(reply);
        }
    }

    /// <summary>Says in one line why there is no answer, and offers what could be done instead.</summary>
    public void Refuse(Reply refusal)
    {
        Write("", SafeText.Of(refusal.Problem!), Warning);
        WriteOffers(refusal);
    }

    private void WriteOffers(Reply reply)
    {
        if (reply.Actions.Count > 0)
        {
            Write("", Row(reply.Actions, from: 1), Style.Plain);
        }

        var number = reply.Actions.Count + 1;
        foreach (var list in reply.Choices.Where(list => list.Choices.Count > 0))
        {
            Write("", $"{SafeText.Of(list.Prompt)}: {Row(list.Choices, number)}", Style.Plain);
            number += list.Choices.Count;
        }
    }

    private void Write(string label, string safe, Style style, Style? labelStyle = null) =>
        console.Write(new HangingText(
            label, labelStyle ?? Strong, BeforeUnit().Replace(safe.Trim(), HangingText.Tie.ToString()), style));

    private static string Row(IReadOnlyList<ReplyAction> actions, int from) => string.Join(
        $"{HangingText.Tie}· ",
        actions.Select((action, index) => $"{from + index} {SafeText.Of(action.Label)}".Replace(' ', HangingText.Tie)));

    // "Leader: 8-lb fluorocarbon", but not a sentence that happens to hold a colon.
    [GeneratedRegex("^[A-Z0-9][^:.,;!?]{0,19}:(?= )|^[a-z][a-z-]{0,19}:(?= )", RegexOptions.CultureInvariant)]
    private static partial Regex Label();

    // A number is not parted from its unit.
    [GeneratedRegex("(?<=[0-9½¼¾]) (?=(?:ft|in|m|cm|mm|oz|g|kg|lb|°F|°C|s|min|N)(?:[^A-Za-z]|$))", RegexOptions.CultureInvariant)]
    private static partial Regex BeforeUnit();
}
