using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Crews;

/// <summary>Two people of a crew who go by one name: whoever names them is asked which, and can say it.</summary>
public sealed class SharedNamesTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new() { Now = new DateTimeOffset(2027, 1, 16, 14, 0, 0, TimeSpan.Zero) };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Theory]
    [InlineData("/catch best angler:{0}", "angler")]
    [InlineData("/derby why person:{0}", "person")]
    [InlineData("/derby angler person:{0}", "person")]
    [InlineData("/trip join answer:in with:{0}", "with")]
    [InlineData("/trip join answer:in apart:{0}", "apart")]
    [InlineData("/trip back who:{0}", "who")]
    [InlineData("/trip late by:+1h who:{0}", "who")]
    [InlineData("/crew setup person:{0} role:steward", "person")]
    public async Task Name_OfTwo_IsAskedAboutAndTheIdOrAMentionAnswers(string line, string option)
    {
        await TwoBensAsync();
        string Line(string who) => string.Format(System.Globalization.CultureInfo.InvariantCulture, line, who);

        Assert.Equal(
            $"2 people are called 'ben': mention the one you mean, or give the id, {option}:1101 or {option}:1102.", (await _room.SayAsync(Line("ben"))).Problem);
        Assert.Null((await _room.SayAsync(Line("<@!1102>"))).Problem);
        Assert.Null((await _room.SayAsync(Line("1101"))).Problem);
    }

    [Fact]
    public async Task Name_OfTwoOfWhomOneTakesPart_IsTheirs()
    {
        await TwoBensAsync();
        await _room.SayAsync("/trip back", "1101", Role.Member, name: "Ben");

        Assert.Equal("Ben is back", (await _room.SayAsync("/trip back who:Ben")).Headline);
    }

    [Fact]
    public async Task SetUp_RoleForANameThatNobodyBears_IsRefusedWithWhoThereIs()
    {
        await TwoBensAsync();

        Assert.Equal(
            "Nobody in this crew is called 'Bert'. There is Ana, Ben and Ben; whoever is new logs or joins something first.",
            (await _room.SayAsync("/crew setup person:Bert role:owner")).Problem);
        Assert.DoesNotContain((await _room.SayAsync("/crew setup")).Lines, line => line.StartsWith("Roles:", StringComparison.Ordinal));
    }

    [Fact]
    public async Task SetUp_RoleForSomebodyThePlatformPointsAt_IsGivenBeforeTheyHaveSaidAnything()
    {
        Assert.Null((await _room.SayAsync("/crew setup person:<@1103> role:steward")).Problem);

        Assert.Null((await _room.SayAsync("/derby create name:Day ends:16:00", "1103", Role.Member, name: "Cy")).Problem);
    }

    [Fact]
    public async Task Best_OfANameMisspelt_OffersTheNearest()
    {
        await TwoBensAsync();

        Assert.Equal("'Anna' has logged nothing in this crew. Nearest: Ana.", (await _room.SayAsync("/catch best angler:Anna")).Problem);
    }

    private async Task TwoBensAsync()
    {
        await _room.SayAsync("/crew setup water:\"Loon Basin\"");
        await _room.SayAsync("/trip plan water:\"Loon Basin\" meet:15:00 return:20:00");
        await _room.SayAsync("/derby create name:Day ends:20:00");
        foreach (var id in (string[])["1101", "1102"])
        {
            await _room.SayAsync("/catch log species:walleye length:20in", id, Role.Member, name: "Ben");
            await _room.SayAsync("/derby join", id, Role.Member, name: "Ben");
            await _room.SayAsync("/trip join answer:in", id, Role.Member, name: "Ben");
            await _room.SayAsync("/trip out", id, Role.Member, name: "Ben");
        }
    }
}
