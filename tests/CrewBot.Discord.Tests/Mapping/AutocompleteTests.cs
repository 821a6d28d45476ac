using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>What is offered while somebody writes an option.</summary>
public sealed class AutocompleteTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Autocomplete_OfSpecies_OffersWhatFits()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            stage.Make.Autocomplete("rig", Subcommand("plan", Option("species", 3, "wall", focused: true))), Limit);

        Assert.Equal(8, answer["type"]!.GetValue<int>());
        Assert.Equal("walleye", answer["data"]!["choices"]![0]!["value"]!.GetValue<string>());
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData("rig", "plan", "species", "")]
    [InlineData("rig", "plan", "no-such-option", "x")]
    [InlineData("rig", "no-such-verb", "species", "x")]
    [InlineData("rig", "plan", "species", "zzzzzz")]
    public async Task Autocomplete_OfAnything_IsAnsweredWithAtMostTwentyFive(
        string family, string verb, string option, string begun)
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            stage.Make.Autocomplete(family, Subcommand(verb, Option(option, 3, begun, focused: true))), Limit);

        Assert.InRange(answer["data"]!["choices"]!.AsArray().Count, 0, 25);
        stage.CheckBodies();
    }
}
