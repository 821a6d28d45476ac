using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>The session that docs/discord-setup.md shows is the one that happens.</summary>
public sealed class SessionPageTests
{
    private const string Start = "<!-- session -->\n";
    private const string End = "<!-- /session -->";

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    /// <summary>Set CREWBOT_WRITE_EXPECTED=1 to write the page anew, then read the difference.</summary>
    [Fact(Timeout = 60_000)]
    public async Task Session_OnThePage_IsWhatHappens()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var happened = $"```text\n{await PlayAsync(stage)}```\n";
        stage.CheckBodies();

        var file = Path.Combine(Root(), "docs", "discord-setup.md");
        var page = (await File.ReadAllTextAsync(file, Limit)).ReplaceLineEndings("\n");
        var from = page.IndexOf(Start, StringComparison.Ordinal) + Start.Length;
        var to = page.IndexOf(End, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("CREWBOT_WRITE_EXPECTED") == "1")
        {
            await File.WriteAllTextAsync(file, page[..from] + happened + page[to..], Limit);
            return;
        }

        Assert.Equal(happened, page[from..to]);
    }

    private static async Task<string> PlayAsync(RoomStage stage)
    {
        var told = new StringBuilder();
        async Task<JsonNode> TellAsync(string deed, JsonObject interaction)
        {
            var answer = await stage.AskAsync(interaction, Limit);
            told.Append(CultureInfo.InvariantCulture, $"{deed}\n");
            foreach (var line in Shown(answer))
            {
                told.Append(CultureInfo.InvariantCulture, $"    {line}\n");
            }

            return answer;
        }

        await TellAsync(
            "Ada types /rig plan species: wal",
            stage.Make.Autocomplete("rig", Subcommand("plan", Option("species", 3, "wal", focused: true))));
        var card = await TellAsync(
            "Ada takes walleye, adds depth: 24ft, and sends",
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"), Option("depth", 3, "24ft"))));
        var press = stage.Make.Button(IdOf(card, "Calmer"));
        press["message"]!["flags"] = Ephemeral;
        await TellAsync("Ada presses Calmer", press);
        var form = await TellAsync("Ada sends /rig plan with nothing", stage.Make.Command("rig", Subcommand("plan")));
        await TellAsync("Ada writes perch 18ft and submits", stage.Make.Modal(IdOf(form), ("ask", "perch 18ft")));
        await TellAsync(
            "Bo wrote \"anyone for pike? 12ft\"; Ada opens that message's menu, Apps > Plan a rig",
            stage.Make.MessageCommand("Plan a rig", "anyone for pike? 12ft"));
        var half = await TellAsync(
            "Bo wrote \"nothing bites at 18ft\"; Ada takes Plan a rig there too", stage.Make.MessageCommand("Plan a rig", "nothing bites at 18ft"));
        await TellAsync(
            "Ada writes walleye as the species and submits", stage.Make.Modal(IdOf(half), ("species", "walleye"), ("depth", "18ft"), ("mood", "")));
        return told.ToString();
    }

    private static IEnumerable<string> Shown(JsonNode answer)
    {
        var data = answer["data"]!;
        return answer["type"]!.GetValue<int>() switch
        {
            8 => [$"offered: {string.Join(", ", data["choices"]!.AsArray().Select(choice => choice!["name"]))}"],
            9 =>
            [
                $"a form: {data["title"]}",
                .. data["components"]!.AsArray().Select(label => $"{label!["label"]}: {label["component"]!["value"]?.GetValue<string>() ?? "…"}"),
            ],
            var type =>
            [
                $"{(type == 7 ? "the card changes" : "a card for Ada alone")}: {data["embeds"]![0]!["title"]}",
                $"buttons: {string.Join(", ", Buttons(data).Select(button => button["label"]))}",
            ],
        };
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}
