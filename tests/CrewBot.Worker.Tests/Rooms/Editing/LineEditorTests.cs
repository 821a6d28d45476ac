using CrewBot.Worker.Rooms.Editing;

namespace CrewBot.Worker.Tests.Rooms.Editing;

public sealed class LineEditorTests
{
    [Theory]
    [InlineData("walleye<Enter>", "walleye")]
    [InlineData("walxeye<LeftArrow><LeftArrow><LeftArrow><Backspace>l<Enter>", "walleye")]
    [InlineData("eye<Home>wall<End> 24ft<Enter>", "walleye 24ft")]
    [InlineData("pike 9ft<C-W>walleye<C-A><A-D>perch<Enter>", "perch walleye")]
    [InlineData("perch<C-U>walleye<C-LeftArrow>x <C-K>y<Enter>", "x y")]
    [InlineData("perch<C-C>walleye<Enter>", "walleye")]
    [InlineData("perc<C-B><C-D>h<Enter>", "perh")]
    [InlineData("🐟e<LeftArrow><Backspace><Enter>", "e")]
    [InlineData("/rig p<Tab>sp<Tab>wa<Tab>mood:n<Tab>g<Tab><Enter>", "/rig plan species:walleye mood:negative ")]
    public void Next_Keys_GiveTheLine(string script, string expected) => Assert.Equal(expected, Editor(script, out _).Next());

    [Theory]
    [InlineData("<UpArrow><Enter>", "walleye 30ft")]
    [InlineData("<UpArrow><UpArrow><Enter>", "perch")]
    [InlineData("<UpArrow><UpArrow><UpArrow><UpArrow><UpArrow><Enter>", "walleye 24ft")]
    [InlineData("<UpArrow><UpArrow><DownArrow><Enter>", "walleye 30ft")]
    [InlineData("wall<UpArrow><UpArrow><Enter>", "walleye 24ft")]
    [InlineData("wall<UpArrow><UpArrow><DownArrow><DownArrow>x<Enter>", "wallx")]
    [InlineData("pike<UpArrow><Enter>", "pike")]
    public void Next_LookingBack_FindsWhatStartsAlike(string script, string expected) =>
        Assert.Equal(expected, Editor(script, out _, "walleye 24ft", "perch", "walleye 30ft").Next());

    [Fact]
    public void Next_ControlDOnAnEmptyLine_Leaves() => Assert.Null(Editor("<C-D>", out _).Next());

    [Fact]
    public void Next_SeveralCandidates_ListsThem()
    {
        Editor("/rig plan mood:ne<Tab><C-C><C-D>", out var terminal).Next();

        Assert.Contains("\nnegative  neutral\n", terminal.Written, StringComparison.Ordinal);
    }

    [Fact]
    public void Next_LineGiven_IsRemembered()
    {
        var editor = Editor("perch<Enter><UpArrow><Enter>", out _);

        Assert.Equal("perch", editor.Next());
        Assert.Equal("perch", editor.Next());
    }

    [Fact]
    public void Next_HostileHistory_ReachesTheTerminalHarmless()
    {
        var line = Editor("<UpArrow><Enter>", out var terminal, "wall\u001b]0;owned\u0007eye").Next();

        Assert.Equal("wall\u001b]0;owned\u0007eye", line);
        Assert.DoesNotContain("\u001b]", terminal.Written, StringComparison.Ordinal);
        Assert.DoesNotContain("\u0007", terminal.Written, StringComparison.Ordinal);
    }

    private static LineEditor Editor(string script, out ScriptedTerminal terminal, params string[] history)
    {
        terminal = new ScriptedTerminal(ScriptedTerminal.Keys(script));
        return new LineEditor(terminal, new Completer(Commands.Catalog()), new History(history), file: null);
    }
}
