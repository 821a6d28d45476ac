using System.Text.Json;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Commands;

/// <summary>The contract that scripts rely on.</summary>
public sealed class ReplyJsonTests(ChatFixture chat)
{
    private static readonly string[] Keys =
        ["headline", "lines", "struck", "figures", "reasons", "cautions", "pictures", "files", "actions", "choices", "audience", "problem"];

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
            Pictures = [new Picture { Kind = "rig", AlternativeText = "A rig" }],
            Files = [new ReplyFile("catches.csv", "text/csv", "a,b"u8.ToArray())],
            Actions = [new ReplyAction("One up", ActionKind.Run, "rig plan", new Dictionary<string, string> { ["species"] = "walleye" })],
            Audience = Audience.Crew,
        });

        Assert.Equal(Keys, NamesOf(root));
        Assert.Equal("Walleye at 24 ft — ½ oz", root.GetProperty("headline").GetString());
        Assert.Equal(["key", "value", "unit"], NamesOf(root.GetProperty("figures")[0]));
        Assert.Equal(8.25, root.GetProperty("figures")[0].GetProperty("value").GetDouble());
        Assert.Equal(["kind", "alternativeText"], NamesOf(root.GetProperty("pictures")[0]));
        Assert.Equal("a,b"u8, root.GetProperty("files")[0].GetProperty("content").GetBytesFromBase64());
        Assert.Equal(["label", "kind", "command", "fields"], NamesOf(root.GetProperty("actions")[0]));
        Assert.Equal("/rig plan species:walleye", root.GetProperty("actions")[0].GetProperty("command").GetString());
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

    [Fact]
    public void Read_WhatWasWritten_IsTheSameReply()
    {
        var fields = CommandOption.Optional("note", "A note", new FreeTextReader("a note"));
        var options = new Dictionary<string, string> { ["species"] = "lake trout", ["note"] = "a \"big\" one: depth:9ft", ["water"] = "Loon" };
        var reply = new Reply
        {
            Headline = "Done",
            Actions = [ReplyAction.Form("More", "catch log", options, fields), new("Lines up", ActionKind.Run, "lines up")],
            Choices = [ReplyChoice.Of("Which water", "catch log", options, fields, [("Loon Basin", "Loon Basin"), ("Tamarack", "Tamarack Bay")])],
        };

        var read = ReplyJson.Read(ReplyJson.Write(reply));

        Assert.Equal(ReplyJson.Write(reply), ReplyJson.Write(read));
        Assert.Equal(options, read.Actions[0].Options);
        Assert.Equal("catch log", read.Actions[0].Path);
        Assert.Equal(["note"], read.Actions[0].Fields);
        Assert.Empty(read.Actions[1].Options);
        Assert.Equal("Tamarack Bay", read.Choices[0].Choices[1].Options["note"]);
    }

    /// <summary>A first answer as version 0.1 kept it, before actions had fields and replies had lists.</summary>
    [Fact]
    public void Read_AnswerOfAnEarlierVersion_IsReadStill()
    {
        var read = ReplyJson.Read("""
            {
              "headline": "2 lines down", "lines": ["One."], "figures": [], "reasons": [], "cautions": [], "pictures": [],
              "actions": [{ "label": "Up", "kind": "run", "command": "/lines up when:\"10 min ago\"" }],
              "audience": "asker", "problem": null
            }
            """);

        Assert.Equal("lines up", read.Actions[0].Path);
        Assert.Equal("10 min ago", read.Actions[0].Options["when"]);
        Assert.Empty(read.Actions[0].Fields);
        Assert.Empty(read.Choices);
    }

    private static JsonElement Parse(Reply reply) => JsonDocument.Parse(ReplyJson.Write(reply)).RootElement;

    private static IEnumerable<string> NamesOf(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
