using System.Text.Json;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Tests.Rooms.Rendering;

public sealed class SafeTextTests
{
    [Theory]
    [InlineData("walleye, 24 ft (7.3 m) – ½ oz", "walleye, 24 ft (7.3 m) – ½ oz")]
    [InlineData("a\tb\nc", "a b c")]
    [InlineData("\u001b[2J", "\uFFFD[2J")]
    [InlineData("\u009b31m\u007f", "\uFFFD31m\uFFFD")]
    [InlineData("\u202Eeyellaw\u202C \u2066x\u2069 \u200F", "\uFFFDeyellaw\uFFFD \uFFFDx\uFFFD \uFFFD")]
    [InlineData("\uFEFF\u2028\uE000", "\uFFFD\uFFFD\uFFFD")]
    [InlineData("👨\u200D👩\u200D👧 日本", "👨\u200D👩\u200D👧 日本")]
    public void Of_Text_HoldsNothingATerminalActsOn(string text, string safe) => Assert.Equal(safe, SafeText.Of(text));

    [Fact]
    public void Of_HalfAPair_IsReplaced() => Assert.Equal("a\uFFFDb", SafeText.Of("a\uD83Db"));

    [Fact]
    public void OfJson_DirectionMarks_AreEscapedAndReadTheSame()
    {
        const string Text = "\u202Eeyellaw 🐟 日本";

        var json = SafeText.OfJson($"{{\n  \"a\": \"{Text}\"\n}}");

        Assert.Equal("{\n  \"a\": \"\\u202eeyellaw \\ud83d\\udc1f 日本\"\n}", json);
        Assert.Equal(Text, JsonDocument.Parse(json).RootElement.GetProperty("a").GetString());
    }
}
