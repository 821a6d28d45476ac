using CrewBot.Chat.Commands;
using CsCheck;

namespace CrewBot.Chat.Tests.Commands;

public sealed class CommandTextTests(ChatFixture chat)
{
    [Theory]
    [InlineData("/rig plan species:walleye depth:24ft")]
    [InlineData("rig plan species:walleye depth:24ft")]
    [InlineData("  /RIG   Plan  SPECIES:walleye   depth: 24ft ")]
    [InlineData("/rig plan species:\"walleye\" depth:“24ft”")]
    [InlineData("/rig\tplan\tspecies:walleye\tdepth:24ft")]
    public void Read_CommandHoweverSpaced_IsTheSame(string line) =>
        AssertRead(line, "rig plan", ("species", "walleye"), ("depth", "24ft"));

    [Fact]
    public void Read_ValueWithSpaces_NeedsNoQuotes() =>
        AssertRead("/rig plan species:yellow perch depth:5ft 6in", "rig plan", ("species", "yellow perch"), ("depth", "5ft 6in"));

    [Fact]
    public void Read_ColonInQuotes_BelongsToTheText() => AssertRead(
        "/rig plan ask:\"walleye depth:deep 24ft\" mood:negative", "rig plan", ("ask", "walleye depth:deep 24ft"), ("mood", "negative"));

    [Fact]
    public void Read_QuoteMarkAsInches_IsNoQuotation() =>
        AssertRead("/rig plan depth:5'6\" species:walleye", "rig plan", ("depth", "5'6\""), ("species", "walleye"));

    [Theory]
    [InlineData("walleye 24ft negative", "walleye 24ft negative")]
    [InlineData("\"walleye 24ft\"", "walleye 24ft")]
    [InlineData("/rig plan walleye 24ft", "walleye 24ft")]
    [InlineData("🎣 walleye", "🎣 walleye")]
    public void Read_BareWords_AreAPlan(string line, string ask) => AssertRead(line, "rig plan", ("ask", ask));

    [Theory]
    [InlineData("> log walleye 22in")]
    [InlineData("!log walleye 22in")]
    [InlineData("**/log walleye 22in")]
    public void Read_MarksBeforeACommand_AreNoPartOfIt(string line) => AssertRead(line, "catch log", ("ask", "walleye 22in"));

    [Fact]
    public void Read_ColonAfterAWord_IsNoOption() => AssertRead("log walleye: 22in released", "catch log", ("ask", "walleye: 22in released"));

    [Fact]
    public void Read_WordsBeforeOptions_AreBothTaken() =>
        AssertRead("walleye negative depth:24ft", "rig plan", ("ask", "walleye negative"), ("depth", "24ft"));

    // A command's first option needs no name.
    [Fact]
    public void Read_WordsBeforeOptionsWithoutAShorthand_AreTheFirstOption()
    {
        AssertRead("/ice board Loon Basin", "ice board", ("water", "Loon Basin"));
        AssertRead("box add braid 6lb, hook 6", "box add", ("item", "braid 6lb, hook 6"));
        AssertRead("/rig drop 1/8oz depth:30ft", "rig drop", ("weight", "1/8oz"), ("depth", "30ft"));
    }

    [Theory]
    [InlineData("rig walleye 24ft", "rig walleye 24ft")]
    [InlineData("rig plan walleye 24ft", "walleye 24ft")]
    public void Read_BareFamilyWithoutASlash_IsAPlanInWords(string line, string ask) => AssertRead(line, "rig plan", ("ask", ask));

    [Theory]
    [InlineData("", "Nothing to answer. Try /rig plan species:walleye depth:24ft mood:negative")]
    [InlineData("  \t ", "Nothing to answer. Try /rig plan species:walleye depth:24ft mood:negative")]
    [InlineData("/", "There is no command '/'. There is /box, /catch, /crew, /derby, /ice, /line, /lines, /rig, /trip, /weather.")]
    [InlineData("/rgi plan", "There is no command '/rgi'. Nearest: /rig.")]
    [InlineData("/rig", "/rig needs one of: broke, check, drop, pair, plan, spread, unbroke.")]
    [InlineData("/catch fillet 1", "There is no /catch 'fillet'. There are best, edit, export, import, leaders, learn, list, log, void.")]
    [InlineData("/rig paln", "There is no /rig 'paln'. Nearest: /rig plan; there are broke, check, drop, pair, plan, spread, unbroke.")]
    [InlineData("/rig drop fish:1", "/rig drop has no option 'fish'. It takes weight, material, density, shape, depth, line-out, water, line and 1 more.")]
    [InlineData("/rig plan specis:walleye", "/rig plan has no option 'specis'. Nearest: species.")]
    [InlineData("/rig plan species:walleye species:pike", "species is given twice: keep one.")]
    [InlineData("/rig drop 1/8oz weight:1/4oz", "weight is given twice: keep one.")]
    [InlineData("/rig plan species:", "species is empty. Give a species, such as walleye, sauger.")]
    [InlineData("/rig plan species: depth:24ft", "species is empty. Give a species, such as walleye, sauger.")]
    [InlineData("/rig plan species:wall\u0000eye", "There is a control character in that; type it again without.")]
    [InlineData("walleye\u001b[31m 24ft", "There is a control character in that; type it again without.")]
    public void Read_LineThatIsNoCommand_SaysWhatIsWrong(string line, string fault) =>
        Assert.Equal(fault, CommandText.Read(line, chat.Catalog).Fault);

    [Fact]
    public void Read_TenThousandCharacters_AreTooMany() => Assert.Equal(
        "That is 10000 characters; a command fits in 1500.", CommandText.Read(new string('a', 10_000), chat.Catalog).Fault);

    [Fact]
    public void Read_AnyLine_GivesACommandOrALine() => Gen.OneOf(Gen.String, Mangled).Sample(line =>
    {
        var reading = CommandText.Read(line, chat.Catalog);
        if (reading.Fault is { } fault)
        {
            Assert.DoesNotContain('\n', fault);
            Assert.InRange(fault.Length, 1, 300);
        }
        else
        {
            Assert.True(chat.Catalog.TryFind(reading.Value!.Path, out _));
        }
    });

    private static Gen<string> Mangled { get; } = Gen
        .OneOf("/rig plan", "/line", "rig", "species:", "depth:", "ask:", "\"", "“", "”", "walleye", "24ft", " ", ":", "/", "'", "\t", "🐟", "\u202e")
        .Array[0, 10]
        .Select(parts => string.Concat(parts));

    private void AssertRead(string line, string path, params (string, string)[] options)
    {
        var reading = CommandText.Read(line, chat.Catalog);

        Assert.Null(reading.Fault);
        Assert.Equal(path, reading.Value!.Path);
        Assert.Equal(options, reading.Value.Options.Select(option => (option.Key, option.Value)));
    }
}
