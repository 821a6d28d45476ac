using CrewBot.Chat.Commands;
using CrewBot.Chat.Rigs;

namespace CrewBot.Chat.Tests.Docs;

public sealed class PagesTests(ChatFixture chat)
{
    [Fact]
    public async Task Figures_Page_ListsEveryKeyOfTheCode() => await StoredText.AssertAsync("docs/figures.md", FiguresPage.Write());

    [Fact]
    public async Task Commands_Page_ListsEveryCommandOfTheCode() =>
        await StoredText.AssertAsync("docs/commands.md", CommandsPage.Write(chat.Catalog));

    [Fact]
    public void Figures_Keys_AreUniqueAndPlain()
    {
        Assert.Distinct(FiguresPage.All.Select(key => key.Key));
        Assert.All(FiguresPage.All, key => Assert.Matches("^[a-z]+(-[a-z]+)*(\\.[a-z]+(-[a-z]+)*)*$", key.Key));
    }

    // The list is written by hand in the code: a key that is declared and left off it would be in no docs.
    [Fact]
    public void Figures_All_HoldsEveryKeyThatIsDeclared() => Assert.Equal(
        typeof(RigFigures).Assembly.GetTypes()
            .Where(type => type.Name.EndsWith("Figures", StringComparison.Ordinal))
            .SelectMany(type => type.GetFields())
            .Select(field => field.GetValue(null))
            .OfType<FigureKey>()
            .Count(),
        FiguresPage.All.Count);
}
