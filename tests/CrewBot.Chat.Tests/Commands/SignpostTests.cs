using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Commands;

/// <summary>Other words for a command lead to the line to type, and run nothing.</summary>
public sealed class SignpostTests(ChatFixture chat)
{
    [Theory]
    [InlineData("undo", "There is no command 'undo'. Nearest: /catch void catch:41, or /ice withdraw report:1 reason:\"wrong lake\"")]
    [InlineData("Oops!", "There is no command 'oops'. Nearest: /catch void catch:41, or /ice withdraw report:1 reason:\"wrong lake\"")]
    [InlineData("delete that last walleye", "There is no command 'delete'. Nearest: /catch void catch:41")]
    [InlineData("remove 12", "There is no command 'remove'. Nearest: /catch void catch:41")]
    [InlineData("/catch delete 1", "There is no command 'catch delete'. Nearest: /catch void catch:41")]
    [InlineData("delete my data", "There is no command 'delete my data'. Nearest: /crew privacy do:show")]
    [InlineData("derby end", "There is no command 'derby end'. Nearest: /derby close")]
    [InlineData("/derby finish", "There is no command 'derby finish'. Nearest: /derby close")]
    [InlineData("derby stop now", "There is no command 'derby stop'. Nearest: /derby close")]
    [InlineData("derby start", "There is no command 'derby start'. Nearest: /derby create name:\"Basin day\" starts:08:00 ends:15:00 species:walleye")]
    [InlineData("derby new walleye", "There is no command 'derby new'. Nearest: /derby create name:\"Basin day\" starts:08:00 ends:15:00 species:walleye")]
    [InlineData("trip home", "There is no command 'trip home'. Nearest: /trip back trip:1")]
    [InlineData("cancel trip", "There is no command 'cancel trip'. Nearest: /trip cancel trip:1")]
    [InlineData("leaderboard", "There is no command 'leaderboard'. Nearest: /catch leaders span:month, or /derby standings")]
    [InlineData("who’s winning?", "There is no command 'who's winning'. Nearest: /catch leaders span:month, or /derby standings")]
    [InlineData("scores", "There is no command 'scores'. Nearest: /derby standings")]
    [InlineData("weigh in walleye 22in", "There is no command 'weigh in'. Nearest: /derby enter species:walleye length:22.5in fate:released")]
    [InlineData("/ice delete 3", "There is no command 'ice delete'. Nearest: /ice withdraw report:1 reason:\"wrong lake\"")]
    [InlineData("I’m back", "There is no command 'i'm back'. Nearest: /trip back trip:1")]
    [InlineData("we're off the ice", "There is no command 'we're off the ice'. Nearest: /trip back trip:1")]
    [InlineData("broke off again", "There is no command 'broke off'. Nearest: /rig broke place:join end:curl knot:\"double uni\" line:\"braid 6lb\" pull:3.5lb")]
    [InlineData("lines in", "There is no command 'lines in'. Nearest: /lines down lines:2 presentation:\"jigging spoon\", or /lines up when:\"10 min ago\"")]
    [InlineData("switch to metric", "There is no command 'switch to metric'. Nearest: /crew me units:metric")]
    public void Read_AnotherWordForACommand_LeadsToItsExample(string line, string fault) =>
        Assert.Equal(fault, CommandText.Read(line, chat.Catalog).Fault);

    // What begins with a command's word is tried as that first.
    [Theory]
    [InlineData("ice bord", "No. Nearest: /ice board water:\"Loon Basin\"")]
    [InlineData("ice bord Loon Basin", "No. Nearest: /ice board water:\"Loon Basin\"")]
    [InlineData("ice status", "No. There is no command 'ice status'. Nearest: /ice board water:\"Loon Basin\"")]
    [InlineData("log undo", "No. There is no command 'log undo'. Nearest: /catch void catch:41")]
    [InlineData("ice Loon Basin hump", "No.")]
    [InlineData("catch list", "No.")]
    [InlineData("/ice bord", "No.")]
    [InlineData("ice", "No.")]
    public void Beside_ARefusal_StandsWhatMayHaveBeenMeant(string line, string said) =>
        Assert.Equal(said, Signpost.Beside("No.", line, chat.Catalog));

    [Fact]
    public void AlsoSaid_OfAnyCommand_IsNoCommandAndLeadsThere() => Assert.All(
        chat.Catalog.Commands.SelectMany(info => info.AlsoSaid.Select(words => (info.Example, words))),
        also =>
        {
            Assert.False(chat.Catalog.TryFind(also.words, out _));
            Assert.Contains(also.Example, Signpost.Find(also.words, chat.Catalog), StringComparison.Ordinal);
        });
}
