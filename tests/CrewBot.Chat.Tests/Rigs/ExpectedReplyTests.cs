using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Rigs;

/// <summary>Whole replies as stored in <c>Expected</c>: what changes in one is read by a person before it is kept.</summary>
public sealed class ExpectedReplyTests(ChatFixture chat)
{
    [Theory]
    [InlineData("plan-walleye-negative", "/rig plan species:walleye depth:24ft mood:negative")]
    [InlineData("plan-walleye-words", "walleye 24ft negative in the open -12C pike around")]
    [InlineData("plan-pike", "/rig plan species:pike depth:10ft mood:positive")]
    [InlineData("plan-pike-trophy-dead-bait", "/rig plan species:pike presentation:\"dead bait\" size:trophy mood:negative lines:3")]
    [InlineData("plan-perch", "/rig plan species:perch depth:30ft")]
    [InlineData("plan-laker-metric", "/rig plan species:laker depth:18m mood:positive", CrewUnits.Metric)]
    [InlineData("pair-walleye", "/rig pair species:walleye depth:24ft mood:neutral lines:2")]
    [InlineData("spread-walleye", "/rig spread species:walleye depth:24ft holes:6")]
    [InlineData("spread-walleye-hit", "/rig spread species:walleye depth:24ft holes:6 hit:3")]
    [InlineData("check-bad-rig", "/rig check mainline:\"nylon 4lb\" leader:\"fluorocarbon 12lb 24in\" hardware:\"swivel size 14\" lure:\"1/32oz jigging spoon\" hook:14 species:pike depth:30ft")]
    [InlineData("check-sound-rig", "/rig check mainline:\"braid 6lb\" leader:\"fluorocarbon 8lb 24in\" join:\"double uni\" knot:palomar species:walleye")]
    [InlineData("broke-join-curl", "/rig broke place:join end:curl")]
    [InlineData("drop-bare-ball", "/rig drop weight:1/8oz material:lead shape:ball depth:30ft water:1C line:none")]
    [InlineData("drop-with-line", "/rig drop weight:1/16oz material:lead depth:10m water:4C line:\"nylon 0.2mm\"")]
    [InlineData("drop-in-current", "/rig drop weight:1/8oz material:lead line:\"nylon 0.2mm\" line-out:10m water:4C current:0.1m/s")]
    [InlineData("compare-braid-nylon", "/line compare line:\"braid 6lb\" with:\"nylon 6lb\" depth:30ft")]
    [InlineData("spool", "/line spool capacity:\"120m 0.22mm\" new:0.18mm top:100m")]
    public async Task Say_StoredCommand_GetsTheStoredReply(string name, string line, CrewUnits units = CrewUnits.Customary)
    {
        var reply = await chat.SayAsync(line, units);

        await StoredText.AssertAsync($"tests/CrewBot.Chat.Tests/Expected/{name}.txt", Render(line, reply));
    }

    private static string Render(string line, Reply reply)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"> {line}\n\n{reply.Problem}{reply.Headline}\n");
        Add(text, "", reply.Lines);
        Add(text, "Cautions", reply.Cautions);
        Add(text, "Reasons", reply.Reasons);
        Add(text, "Figures", reply.Figures.Select(figure => string.Create(CultureInfo.InvariantCulture, $"{figure.Key} {figure.Value:G4} {figure.Unit}")));
        Add(text, "Actions", reply.Actions.Select(action => $"{action.Label}: {action.Command}"));
        return text.ToString();
    }

    private static void Add(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0)
        {
            return;
        }

        text.Append(heading.Length > 0 ? $"\n{heading}\n" : "");
        all.ForEach(line => text.Append(CultureInfo.InvariantCulture, $"  {line}\n"));
    }
}
