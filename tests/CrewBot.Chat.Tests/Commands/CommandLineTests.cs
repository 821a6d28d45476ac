using CrewBot.Chat.Commands;
using CsCheck;

namespace CrewBot.Chat.Tests.Commands;

public sealed class CommandLineTests(ChatFixture chat)
{
    [Theory]
    [InlineData("walleye", "/rig plan species:walleye")]
    [InlineData("yellow perch", "/rig plan species:\"yellow perch\"")]
    [InlineData("5'6\"", "/rig plan species:5'6\"")]
    [InlineData("\"big\" perch", "/rig plan species:\"\"\"big\"\" perch\"")]
    public void Write_Value_IsQuotedOnlyWhereItMustBe(string value, string line) =>
        Assert.Equal(line, CommandLine.Write("rig plan", [new("species", value)]));

    // A button holds a command as text: whatever a person wrote for an option must come back as it was.
    [Fact]
    public void Write_AnyValues_ReadBackAsTheSameCommand() =>
        Gen.Select(Value, Value, Value).Sample((ask, species, depth) =>
        {
            KeyValuePair<string, string>[] options = [new("ask", ask), new("species", species), new("depth", depth)];

            var reading = CommandText.Read(CommandLine.Write("rig plan", options), chat.Catalog);

            Assert.Null(reading.Fault);
            Assert.Equal("rig plan", reading.Value!.Path);
            Assert.Equal(options, reading.Value.Options);
        });

    private static Gen<string> Value { get; } = Gen
        .OneOf("a", "walleye", "24", " ", "  ", "\"", "'", "“", "”", ":", "depth:", "species:", "/", "-", "½", "🐟", "°", "\u202e", "\t", "\u00a0")
        .Array[1, 12]
        .Select(parts => string.Concat(parts).Trim())
        .Where(text => text.Length > 0);
}
