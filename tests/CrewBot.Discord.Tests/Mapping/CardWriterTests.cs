using System.Text.Json;
using System.Text.Json.Nodes;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Contracts;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;
using CsCheck;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class CardWriterTests : IDisposable
{
    private static readonly Gen<Reply> AnyReply =
        from headline in Gen.String[0, 400]
        from lines in Gen.String[0, 900].Array[0, 30]
        from reasons in Gen.String[0, 900].Array[0, 30]
        from cautions in Gen.String[0, 900].Array[0, 12]
        from labels in Gen.String[0, 120].Array[0, 40]
        from prompts in Gen.String[0, 200].Array[0, 4]
        from audience in Gen.Enum<Audience>()
        select new Reply
        {
            Headline = headline,
            Lines = lines,
            Reasons = reasons,
            Cautions = cautions,
            Actions = [.. labels.Select((label, number) =>
                ActionOf(number, label))],
            Choices = [.. prompts.Select((prompt, list) =>
                new ReplyChoice(prompt, [.. labels.Select((label, number) => ActionOf(100 * (list + 1) + number, label))]))],
            Audience = audience,
        };

    private readonly LogBook _logs = new();
    private readonly CardWriter _writer;

    public CardWriterTests()
    {
        var catalog = TestCommands.Create(_logs).Catalog;
        var buttons = new LongButtons(new ButtonBook(CrewBook.None), TimeProvider.System, new Logger<LongButtons>(_logs));
        _writer = new CardWriter(new ButtonRows(new PressCodec(catalog, buttons)));
    }

    public void Dispose() => _logs.Dispose();

    /// <summary>The documented limits of messages, cards and components.</summary>
    [Fact]
    public void Write_AnyReply_KeepsEveryPublishedLimit()
    {
        AnyReply.Sample(
            reply =>
            {
                foreach (var purpose in Enum.GetValues<CardPurpose>())
                {
                    AssertFits(_writer.Write(reply, purpose).AsMessage);
                }
            },
            iter: 200);
    }

    [Fact]
    public void Write_AnyReply_FitsThePublishedDescription()
    {
        var description = ApiDescription.OrSkip();
        AnyReply.Sample(
            reply =>
            {
                var body = JsonSerializer.Serialize(_writer.Write(reply, CardPurpose.Answer).AsMessage, WireJson.Default.MessageBody);
                description.Check(new RecordedRequest(
                    "POST", "webhooks/1/t", new Dictionary<string, string>(), JsonNode.Parse(body), [], 0));
            },
            iter: 30);
    }

    [Fact]
    public void Write_TooManyLines_NeverCutsACautionForThem()
    {
        var reply = new Reply
        {
            Headline = "Plan",
            Lines = [.. Enumerable.Repeat(new string('x', 400), 30)],
            Cautions = ["No ice is safe: measure as you go."],
        };

        var text = _writer.Write(reply, CardPurpose.Answer).Body.Embeds![0].Description!;
        Assert.EndsWith("⚠️ No ice is safe: measure as you go.", text, StringComparison.Ordinal);
        Assert.Contains("more lines)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_TextFromPeople_CanNeitherPingNorLayOut()
    {
        var card = _writer.Write(
            Reply.Refuse("can't read '@everyone **<@1100000000000000003>**'"), CardPurpose.Answer);

        Assert.Equal(
            "can't read '@\u200Beveryone \\*\\*\\<@\u200B1100000000000000003>\\*\\*'", card.Body.Embeds![0].Description);
        Assert.Null(card.Body.Content);
        Assert.Empty(card.Body.AllowedMentions.Parse);
        Assert.True(card.IsPrivate);
    }

    private static ReplyAction ActionOf(int number, string label)
    {
        var options = new Dictionary<string, string> { ["word"] = $"{number}" };
        return (number % 4) switch
        {
            3 => ReplyAction.Form($"No. {number} {label}", TestCommands.Path, options, TestCommands.Word),
            var kind => new ReplyAction($"No. {number} {label}", (ActionKind)kind, TestCommands.Path, options),
        };
    }

    private static void AssertFits(MessageBody body)
    {
        var embed = Assert.Single(body.Embeds!);
        Assert.InRange(embed.Title?.Length ?? 1, 1, 256);
        Assert.InRange(embed.Description!.Length, 1, 4096);
        Assert.InRange((embed.Title?.Length ?? 0) + embed.Description.Length, 1, 6000);
        Assert.InRange(body.Components!.Count, 0, 5);
        var ids = new List<string>();
        foreach (var row in body.Components)
        {
            Assert.InRange(row.Components!.Count, 1, 5);
            foreach (var part in row.Components)
            {
                Assert.InRange(part.CustomId!.Length, 1, 100);
                Assert.True(part.Label is null or { Length: >= 1 and <= 80 });
                Assert.InRange(part.Options?.Count ?? 1, 1, 25);
                Assert.InRange(part.Placeholder?.Length ?? 0, 0, 150);
                Assert.All(part.Options ?? [], option => Assert.InRange(option.Value.Length, 1, 100));
                ids.Add(part.CustomId);
            }
        }

        Assert.Equal(ids.Count, ids.Distinct().Count());
    }
}
