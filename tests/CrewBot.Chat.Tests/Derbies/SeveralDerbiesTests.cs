using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Derbies;

/// <summary>More than one derby at a time: what changes something for everybody asks which, what shows one names it.</summary>
public sealed class SeveralDerbiesTests : IAsyncDisposable
{
    private static readonly DateTimeOffset Morning = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    private readonly CrewRoom _room = new() { Now = Morning };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Theory]
    [InlineData("/derby close", "/derby close derby:\"Perch day\" or /derby close derby:Evening")]
    [InlineData("/derby rulings entry:1 ruling:accept", "/derby rulings entry:1 ruling:accept derby:\"Perch day\" or /derby rulings entry:1 ruling:accept derby:Evening")]
    [InlineData("/derby amend entry:1 length:21in reason:misread", "/derby amend entry:1 length:21in reason:misread derby:\"Perch day\" or /derby amend entry:1 length:21in reason:misread derby:Evening")]
    [InlineData("/derby penalty entry:1 length:1in reason:late", "/derby penalty entry:1 length:1in reason:late derby:\"Perch day\" or /derby penalty entry:1 length:1in reason:late derby:Evening")]
    [InlineData("/derby protest entry:1 reason:doubt", "/derby protest entry:1 reason:doubt derby:\"Perch day\" or /derby protest entry:1 reason:doubt derby:Evening")]
    [InlineData("/derby saw entry:1", "/derby saw entry:1 derby:\"Perch day\" or /derby saw entry:1 derby:Evening")]
    [InlineData("/derby leave", "/derby leave derby:\"Perch day\" or /derby leave derby:Evening")]
    public async Task Change_WhereTwoCanBeMeant_AsksWhichAndShowsWhatToType(string line, string typed)
    {
        await StartTwoAsync();

        Assert.Equal($"Which derby? It can be Perch day and Evening. Name it: {typed}", (await _room.SayAsync(line, "Bo")).Problem);
    }

    [Fact]
    public async Task Close_AsItWasAskedFor_ClosesThatOneAndASecondCloseAsksAgain()
    {
        await StartTwoAsync();

        Assert.Equal("Evening is closed", (await _room.SayAsync("/derby close derby:evening")).Headline);

        Assert.StartsWith("Which derby?", (await _room.SayAsync("/derby close")).Problem, StringComparison.Ordinal);
        Assert.Equal("Evening is closed already. /derby reopen opens it again.", (await _room.SayAsync("/derby close derby:1")).Problem);
    }

    [Fact]
    public async Task Close_OnceProtestsInTheOtherAreOver_TakesTheOneThatIsLeft()
    {
        await StartTwoAsync();
        await _room.SayAsync("/derby close derby:Evening");
        _room.Now = Morning.AddDays(1);

        Assert.Equal("Perch day is closed", (await _room.SayAsync("/derby close")).Headline);
    }

    [Fact]
    public async Task Change_OfADerbyToCome_IsNotMeantWhereThereIsAnEntryToRuleOn()
    {
        await _room.SayAsync("/derby create name:Evening ends:16:00");
        await _room.SayAsync("/derby create name:Next starts:\"tomorrow 08:00\" ends:\"tomorrow 15:00\"");
        await EnterAsync("Evening");

        Assert.Null((await _room.SayAsync("/derby rulings entry:1 ruling:accept")).Problem);
    }

    [Fact]
    public async Task Reopen_WhereOneOfTwoIsClosed_OpensThatOne()
    {
        await StartTwoAsync();
        await _room.SayAsync("/derby close derby:Evening");

        Assert.Equal("Evening is open again", (await _room.SayAsync("/derby reopen")).Headline);
    }

    [Fact]
    public async Task Reopen_WhereBothAreClosed_AsksWhich()
    {
        await StartTwoAsync();
        await _room.SayAsync("/derby close derby:Evening");
        await _room.SayAsync("/derby close derby:\"Perch day\"");

        Assert.StartsWith("Which derby?", (await _room.SayAsync("/derby reopen")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/derby standings")]
    [InlineData("/derby results")]
    [InlineData("/derby rules")]
    [InlineData("/derby rulings")]
    [InlineData("/derby angler")]
    [InlineData("/derby why")]
    [InlineData("/derby enter species:walleye length:20in")]
    public async Task Show_OfSeveral_TakesOneAndNamesIt(string line)
    {
        await StartTwoAsync();

        Assert.Contains("Perch day", (await _room.SayAsync(line)).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Saw_OfTheOnlyOneThatCanBeMeant_NamesIt()
    {
        await StartTwoAsync();
        await _room.SayAsync("/derby close derby:Evening");

        Assert.Equal("Bo saw entry 1 in Perch day: walleye, 20 in", (await _room.SayAsync("/derby saw entry:1", "Bo", Role.Member)).Headline);
    }

    [Fact]
    public async Task Join_OfSeveral_TakesOneAndNamesIt()
    {
        await StartTwoAsync();

        Assert.Equal("Cy is in Perch day", (await _room.SayAsync("/derby join", "Cy")).Headline);
    }

    [Theory]
    [InlineData("/derby rules derby:\"perch day\"", null)]
    [InlineData("/derby rules derby:#2", null)]
    [InlineData("/derby rules derby:Evenign", "There is no derby 'Evenign' in this crew. Nearest: Evening.")]
    public async Task Derby_ByNameOrNumber_IsFound(string line, string? problem)
    {
        await StartTwoAsync();

        Assert.Equal(problem, (await _room.SayAsync(line)).Problem);
    }

    [Fact]
    public async Task Create_WithTheNameOfOneThatIsNotOver_IsRefusedUntilItIs()
    {
        await StartTwoAsync();
        const string Again = "/derby create name:\"perch day\" ends:\"tomorrow 16:00\"";

        Assert.Equal(
            "Perch day is the name of derby 2, which is not over yet: give another, such as name:\"Perch day 2\"", (await _room.SayAsync(Again)).Problem);
        await _room.SayAsync("/derby close derby:\"Perch day\"");
        Assert.NotNull((await _room.SayAsync(Again)).Problem);

        _room.Now = Morning.AddHours(4);
        Assert.Equal("Derby 3, perch day, is set up", (await _room.SayAsync(Again)).Headline);
        Assert.StartsWith("The rules of derby 3", (await _room.SayAsync("/derby rules derby:\"Perch day\"")).Headline, StringComparison.Ordinal);
    }

    private async Task StartTwoAsync()
    {
        await _room.SayAsync("/derby create name:Evening ends:16:00");
        await _room.SayAsync("/derby create name:\"Perch day\" ends:16:00");
        await EnterAsync("Evening");
        await EnterAsync("\"Perch day\"");
        await _room.SayAsync("/derby leave derby:Evening");
        foreach (var derby in (string[])["Evening", "\"Perch day\""])
        {
            await _room.SayAsync($"/derby join derby:{derby}", "Bo", Role.Member);
        }

        _room.Now = Morning.AddMinutes(20);
    }

    private async Task EnterAsync(string derby)
    {
        await _room.SayAsync($"/derby join derby:{derby}");
        await _room.SayAsync($"/derby enter species:walleye length:20in confirm:yes derby:{derby}");
    }
}
