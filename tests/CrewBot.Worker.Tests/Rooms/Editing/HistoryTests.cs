using CrewBot.Worker.Rooms.Editing;

namespace CrewBot.Worker.Tests.Rooms.Editing;

public sealed class HistoryTests
{
    [Fact]
    public void Add_LineGivenBefore_StandsOnceAsTheLatest()
    {
        var history = new History(["walleye", "perch"]);

        history.Add("walleye");

        Assert.Equal(["perch", "walleye"], history.Lines);
    }

    [Fact]
    public void Add_BlankLine_IsNotRemembered()
    {
        var history = new History(["", " "]);

        Assert.Empty(history.Lines);
    }

    [Fact]
    public void Add_MoreThan500_ForgetsTheOldest()
    {
        var history = new History(Enumerable.Range(0, 501).Select(number => $"line {number}"));

        Assert.Equal(500, history.Lines.Count);
        Assert.Equal("line 1", history.Lines[0]);
    }

    [Fact]
    public void Find_Prefix_SkipsLinesThatStartOtherwise()
    {
        var history = new History(["walleye 24ft", "perch", "Walleye 30ft"]);

        Assert.Equal(2, history.FindBefore("wall", 3));
        Assert.Equal(0, history.FindBefore("wall", 2));
        Assert.Equal(-1, history.FindBefore("wall", 0));
        Assert.Equal(2, history.FindAfter("wall", 0));
        Assert.Equal(-1, history.FindAfter("wall", 2));
    }

    [Fact]
    public void File_WrittenAndRead_GivesTheSameLines()
    {
        using var folder = new TemporaryFolder();
        var file = HistoryFile.Of(new Dictionary<string, string> { ["XDG_STATE_HOME"] = folder.Path })!;

        file.Write(["walleye 24ft", "日本 🐟"]);

        Assert.Equal(["walleye 24ft", "日本 🐟"], file.Read());
        Assert.Equal([folder.File("crewbot/history")], Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void File_PlaceThatCannotBeWritten_IsDoneWithout()
    {
        using var folder = new TemporaryFolder();
        var file = new HistoryFile(Path.Combine(folder.Write("a-file", "in the way"), "history"));

        file.Write(["walleye"]);

        Assert.Empty(file.Read());
    }
}
