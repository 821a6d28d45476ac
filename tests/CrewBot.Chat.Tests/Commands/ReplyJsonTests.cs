using System.Text.Json;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Commands;

/// <summary>The contract that scripts rely on.</summary>
public sealed class ReplyJsonTests(ChatFixture chat)
{
    private static readonly string[] Keys =
        ["headline", "lines", "figures", "reasons", "cautions", "pictures", "files", "actions", "audience", "problem"];

    [Fact]
    public void Write_FullReply_HasEveryKeyByItsName()
    {
        var root = Parse(new Reply
        {
            Headline = "Walleye at 24 ft — ½ oz",
            Lines = ["one", "two"],
            Figures = [new Figure("drop.time", 8.25, "s")],
            Reasons = ["because"],
            Cautions = ["careful"],
            Pictures = [new Picture("rig", "A rig")],
            Files = [new ReplyFile("catches.csv", "text/csv", "a,b"u8.ToArray())],
            Actions = [new ReplyAction("One up", ActionKind.Run, "/rig plan species:walleye")],
            Audience = Audience.Crew,
        });

        Assert.Equal(Keys, NamesOf(root));
        Assert.Equal("Walleye at 24 ft — ½ oz", root.GetProperty("headline").GetString());
        Assert.Equal(["key", "value", "unit"], NamesOf(root.GetProperty("figures")[0]));
        Assert.Equal(8.25, root.GetProperty("figures")[0].GetProperty("value").GetDouble());
        Assert.Equal(["kind", "alternativeText"], NamesOf(root.GetProperty("pictures")[0]));
        Assert.Equal("a,b"u8, root.GetProperty("files")[0].GetProperty("content").GetBytesFromBase64());
        Assert.Equal(["label", "kind", "command"], NamesOf(root.GetProperty("actions")[0]));
        Assert.Equal("run", root.GetProperty("actions")[0].GetProperty("kind").GetString());
        Assert.Equal("crew", root.GetProperty("audience").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("problem").ValueKind);
    }

    [Fact]
    public void Write_Refusal_HasEveryKeyToo()
    {
        var root = Parse(Reply.Refuse("No."));

        Assert.Equal(Keys, NamesOf(root));
        Assert.Equal("No.", root.GetProperty("problem").GetString());
        Assert.Equal("", root.GetProperty("headline").GetString());
        Assert.Equal(0, root.GetProperty("lines").GetArrayLength());
        Assert.Equal("asker", root.GetProperty("audience").GetString());
    }

    [Fact]
    public async Task Write_RealPlan_KeepsDegreesAndDashesReadable()
    {
        var json = ReplyJson.Write(await chat.SayAsync("/rig plan species:walleye depth:24ft air:-12C"));

        Assert.Contains("°F", json, StringComparison.Ordinal);
        Assert.DoesNotContain("\\u", json, StringComparison.Ordinal);
    }

    private static JsonElement Parse(Reply reply) => JsonDocument.Parse(ReplyJson.Write(reply)).RootElement;

    private static IEnumerable<string> NamesOf(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
