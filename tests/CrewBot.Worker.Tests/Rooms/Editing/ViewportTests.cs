using CrewBot.Worker.Rooms.Editing;
using Spectre.Console.Rendering;

namespace CrewBot.Worker.Tests.Rooms.Editing;

public sealed class ViewportTests
{
    [Theory]
    [InlineData("walleye", 7, 10, "walleye", 7)]
    [InlineData("walleye", 0, 10, "walleye", 0)]
    [InlineData("0123456789", 10, 10, "…23456789", 9)]
    [InlineData("0123456789", 0, 8, "012345…", 0)]
    [InlineData("日本🐟", 4, 10, "日本🐟", 6)]
    [InlineData("日本語の釣り", 6, 8, "…の釣り", 7)]
    public void Of_Line_ShowsThePartAroundTheCursor(string text, int cursor, int columns, string shown, int column) =>
        Assert.Equal(new Viewport(shown, column), Viewport.Of(new EditLine(text, cursor), columns));

    [Theory]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(20)]
    [InlineData(51)]
    public void Of_CursorAnywhere_NeverOutgrowsTheRow(int columns)
    {
        const string Text = "rig plan species:日本🐟👨\u200D👩\u200D👧 depth:24ft mood:negative";
        for (var line = EditLine.Of(Text); line.Cursor > 0; line = line.Left())
        {
            var view = Viewport.Of(line, columns);

            Assert.InRange(view.CursorColumn, 0, columns - 1);
            Assert.InRange(new Segment(view.Text).CellCount(), view.CursorColumn, columns - 1);
        }
    }

    [Fact]
    public void Of_HostileText_IsHarmless() =>
        Assert.Equal("a\uFFFD[31m\uFFFDb", Viewport.Of(EditLine.Of("a\u001b[31m\u202Eb"), 40).Text);
}
