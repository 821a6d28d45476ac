using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Tests.Rooms.Rendering;

/// <summary>Renders one reply in every way it may be seen and compares it to a stored text that reviewers read.</summary>
public sealed class ReplyRendererTests
{
    private static readonly Reply Sample = new()
    {
        Headline = "Walleye, negative, 24 ft (7.3 m): set bait, held still a hand's breadth off the bottom",
        Lines =
        [
            "Rod and line: light rod; 6 lb (2.7 kg) braid, 0.13 mm; double uni; 30 in (76 cm) of 6 lb (2.7 kg) fluorocarbon.",
            "Tie on: 1/16 oz (1.8 g) tungsten split shot, size 6 hook, snell; live minnow.",
            "Drag: 0.8–1.0 lb (0.3–0.4 kg) on a hand scale; weakest is the join, on the braid side, 3.0–4.8 lb (1.4–2.2 kg).",
            "A line whose colon comes late, after a comma: it has no label.",
            "Wide: 日本の釣り人は氷の穴からワカサギを釣る 🐟🐟🐟 and so on to the end of the row.",
            "Hostile: \u001b[31mred\u001b[0m \u202Ereversed\u202C \u0007 bell.",
            "A label of many words: too long to hang the text under it, so the text goes on below its start.",
        ],
        Reasons = ["Not shown here."],
        Cautions = ["Free trebles and cold hands: hold the fish's head in the hole and use long pliers. (a spoon carries 1)"],
        Actions =
        [
            new("One up", ActionKind.Run, "/rig plan"), new("One down", ActionKind.Run, "/rig plan"), new("Calmer", ActionKind.Run, "/rig plan"),
            new("Louder", ActionKind.Run, "/rig plan"), new("Second line", ActionKind.Run, "/rig plan"), new("Why", ActionKind.Why, "why"),
            new("Share", ActionKind.Share, "share"),
        ],
    };

    [Theory]
    [InlineData("plain-60.txt", 60, false)]
    [InlineData("plain-100.txt", 100, false)]
    [InlineData("colour-60.txt", 60, true, "TERM=xterm-256color")]
    [InlineData("no-colour-100.txt", 100, true, "TERM=xterm-256color", "NO_COLOR=1")]
    [InlineData("plain-100.txt", 100, true, "TERM=dumb")]
    public void Write_Reply_LooksAsStored(string expected, int width, bool terminal, params string[] environment)
    {
        var desk = new Desk
        {
            Width = width,
            OutputIsTerminal = terminal,
            Environment = environment.Select(variable => variable.Split('=')).ToDictionary(parts => parts[0], parts => parts[1]),
        };

        new ReplyRenderer(ConsoleOutput.Open(desk.Surroundings())).Write(Sample, withActions: true);

        // A colour's escape is stored as a visible sign.
        var rendered = desk.Output.Replace('\u001b', '␛');
        StoredText.AssertSame(expected, rendered);
        Assert.All(rendered.Split('\n'), row => Assert.Equal(row.TrimEnd(), row));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(20)]
    public void Write_NarrowTerminal_LosesNoWord(int width)
    {
        var desk = new Desk { Width = width };

        new ReplyRenderer(ConsoleOutput.Open(desk.Surroundings())).Write(Sample, withActions: true);

        Assert.Contains("pliers", desk.Output.Replace("\n", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
