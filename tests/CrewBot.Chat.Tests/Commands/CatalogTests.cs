using CrewBot.Chat.Commands;
using CrewBot.Chat.Rigs;
using CrewBot.Chat.Weather;

namespace CrewBot.Chat.Tests.Commands;

/// <summary>What must hold of every command there is.</summary>
public sealed class CatalogTests(ChatFixture chat)
{
    private const int LinesOnAPhone = 8;

    private static readonly Dictionary<string, string> UnitOf = RigFigures.All.Concat(WeatherFigures.All).ToDictionary(key => key.Key, key => key.Unit);

    [Fact]
    public async Task Example_OfEveryCommandThatAsksNoCrew_IsAnsweredInFull()
    {
        foreach (var info in chat.Catalog.Commands.Where(command => command.NeedsNoCrew))
        {
            var typed = CommandText.Read(info.Example, chat.Catalog);
            Assert.Equal(info.Path, typed.Value!.Path);
            await AssertAnswersAsync(info.Example);
        }
    }

    [Theory]
    [InlineData("/rig plan species:walleye depth:24ft mood:negative also-there:pike air:-12C lines:2 size:trophy")]
    [InlineData("/rig plan species:pike mood:negative size:trophy")]
    [InlineData("/rig plan species:laker presentation:\"dead bait\" mood:negative step:1")]
    [InlineData("/rig plan species:perch current:0.1m/s")]
    [InlineData("/rig pair species:perch lines:4")]
    [InlineData("/rig pair species:perch lines:1")]
    [InlineData("/rig spread species:walleye holes:40")]
    [InlineData("/rig spread species:walleye holes:6 hit:3")]
    [InlineData("/rig check mainline:\"nylon 4lb\" leader:\"fluorocarbon 12lb\" knot:crimp hardware:\"split ring size 0\" hook:16 lure:\"1/32oz jigging spoon\" species:pike size:trophy depth:60ft current:0.3m/s")]
    [InlineData("/rig drop weight:1/4oz density:9 shape:jigging spoon depth:60ft current:0.05m/s")]
    [InlineData("/line spool capacity:\"120m 0.22mm\" new:\"braid 10lb\" top:100m")]
    public async Task Say_LongestAnswers_StillFitAPhone(string line) => await AssertAnswersAsync(line);

    [Fact]
    public async Task Say_PlanForEverySpeciesAndMood_IsAnsweredInFull()
    {
        foreach (var species in Core.Knowledge.TradeKnowledge.BuiltIn.Species)
        {
            foreach (var mood in new[] { "negative", "neutral", "positive" })
            {
                await AssertAnswersAsync($"/rig plan species:{species.Name} mood:{mood}", pressButtons: false);
            }
        }
    }

    [Fact]
    public void Commands_Each_SaysWhatItIsForInALine() => Assert.All(chat.Catalog.Commands, info =>
    {
        Assert.InRange(info.Description.Length, 1, 100);
        Assert.Matches("^[a-z]+ [a-z]+$", info.Path);
        Assert.StartsWith($"/{info.Path} ", $"{info.Example} ", StringComparison.Ordinal);
    });

    [Fact]
    public void Options_Each_AreNamedAndDescribedAsPlatformsWant() => Assert.All(chat.Catalog.Commands, info =>
    {
        Assert.InRange(info.Options.Count, 1, 25);
        Assert.Distinct(info.Options.Select(option => option.Name));
        Assert.All(info.Options, option =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", option.Name);
            Assert.InRange(option.Description.Length, 1, 100);
            Assert.NotEmpty(option.Accepts);
        });
        // Platforms list what is required first.
        Assert.Equal(info.Options.OrderBy(option => option.IsRequired ? 0 : 1), info.Options);
    });

    private async Task AssertAnswersAsync(string line, bool pressButtons = true)
    {
        var reply = await chat.SayAsync(line);

        Assert.True(reply.Problem is null, $"{line}: {reply.Problem}");
        Assert.NotEmpty(reply.Headline);
        Assert.InRange(reply.Lines.Count, 1, LinesOnAPhone);
        Assert.NotEmpty(reply.Reasons);
        Assert.All(reply.Lines.Concat(reply.Reasons).Concat(reply.Cautions).Append(reply.Headline), AssertReadsWell);
        Assert.Distinct(reply.Figures.Select(figure => figure.Key));
        Assert.All(reply.Figures, figure =>
        {
            Assert.True(double.IsFinite(figure.Value), figure.Key);
            Assert.Equal(UnitOf[WithoutPrefix(figure.Key)], figure.Unit);
        });
        Assert.Equal(["Why", "Share"], reply.Actions.TakeLast(2).Select(action => action.Label));
        if (pressButtons)
        {
            await Task.WhenAll(reply.Actions.Select(async action =>
            {
                var pressed = await chat.SayAsync(action.Command);
                Assert.True(pressed.Problem is null, $"{action.Label} of {line}: {action.Command}: {pressed.Problem}");
            }));
        }
    }

    private static void AssertReadsWell(string text)
    {
        Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("..", text, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text);
    }

    private static string WithoutPrefix(string key) =>
        key.StartsWith("alt", StringComparison.Ordinal) || key.StartsWith("line2.", StringComparison.Ordinal)
            || key.StartsWith("hole", StringComparison.Ordinal) || (key.StartsWith("line", StringComparison.Ordinal) && char.IsAsciiDigit(key[4]))
            ? UnitOf.ContainsKey(key) ? key : key[(key.IndexOf('.', StringComparison.Ordinal) + 1)..]
            : key;
}
