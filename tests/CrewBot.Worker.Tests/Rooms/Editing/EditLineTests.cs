using CrewBot.Worker.Rooms.Editing;

namespace CrewBot.Worker.Tests.Rooms.Editing;

// The cursor is written as | in these lines.
public sealed class EditLineTests
{
    private static readonly Dictionary<string, Func<EditLine, EditLine>> Operations = new()
    {
        ["left"] = line => line.Left(),
        ["right"] = line => line.Right(),
        ["home"] = line => line.Home(),
        ["end"] = line => line.End(),
        ["word-left"] = line => line.WordLeft(),
        ["word-right"] = line => line.WordRight(),
        ["delete-back"] = line => line.DeleteBack(),
        ["delete-forward"] = line => line.DeleteForward(),
        ["delete-word-back"] = line => line.DeleteWordBack(),
        ["delete-word-forward"] = line => line.DeleteWordForward(),
        ["delete-to-start"] = line => line.DeleteToStart(),
        ["delete-to-end"] = line => line.DeleteToEnd(),
    };

    [Theory]
    [InlineData("ab|c", "left", "a|bc")]
    [InlineData("|abc", "left", "|abc")]
    [InlineData("a|bc", "right", "ab|c")]
    [InlineData("abc|", "right", "abc|")]
    [InlineData("ab|c", "home", "|abc")]
    [InlineData("ab|c", "end", "abc|")]
    [InlineData("rig plan |", "word-left", "rig |plan ")]
    [InlineData("depth:24ft|", "word-left", "depth:|24ft")]
    [InlineData("|", "word-left", "|")]
    [InlineData("|rig plan", "word-right", "rig| plan")]
    [InlineData("rig| plan", "word-right", "rig plan|")]
    [InlineData("ab|c", "delete-back", "a|c")]
    [InlineData("|abc", "delete-back", "|abc")]
    [InlineData("a|bc", "delete-forward", "a|c")]
    [InlineData("abc|", "delete-forward", "abc|")]
    [InlineData("mood:negative |x", "delete-word-back", "mood:|x")]
    [InlineData("rig |plan it", "delete-word-forward", "rig | it")]
    [InlineData("rig |plan", "delete-to-start", "|plan")]
    [InlineData("rig |plan", "delete-to-end", "rig |")]
    public void Operation_OnALine_GivesTheLineExpected(string before, string operation, string after) =>
        Assert.Equal(after, Written(Operations[operation](Read(before))));

    // What shows as one character goes as one: a pair, an accent that stands apart, a family, a flag.
    [Theory]
    [InlineData("🐟")]
    [InlineData("e\u0301")]
    [InlineData("👨\u200D👩\u200D👧")]
    [InlineData("🇨🇦")]
    public void Left_BehindOneVisibleCharacter_GoesBeforeAllOfIt(string character)
    {
        var line = EditLine.Of("a" + character);

        Assert.Equal(1, line.Left().Cursor);
        Assert.Equal("a", line.DeleteBack().Text);
        Assert.Equal(line, line.Left().Right());
    }

    [Fact]
    public void Insert_ControlCharacters_AreLeftOut() =>
        Assert.Equal("ab[31mc|d", Written(Read("a|d").Insert("b\u001b[31m\u0007c")));

    private static EditLine Read(string written) =>
        new(written.Replace("|", "", StringComparison.Ordinal), written.IndexOf('|', StringComparison.Ordinal));

    private static string Written(EditLine line) => line.Text.Insert(line.Cursor, "|");
}
