using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>Who brings what, and what is still needed.</summary>
public sealed class TripGearTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Claim_LastAugerByTwoAtOnce_OneGetsItAndTheOtherIsToldWhoHasIt()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip join answer:in", "Bo");

        var replies = await Task.WhenAll(
            Task.Run(() => _room.SayAsync("trip need mine:auger", "Ana", id: "a")), Task.Run(() => _room.SayAsync("trip need mine:auger", "Bo", id: "b")));

        var got = Assert.Single(replies, reply => reply.Problem is null);
        var told = Assert.Single(replies, reply => reply.Problem is not null);
        var owner = got.Headline.Split(' ')[0];
        Assert.Equal($"No auger is missing: {owner} has it.", told.Problem);
    }

    [Fact]
    public async Task Claim_SafetyKit_CountsEachPieceUntilNothingIsMissing()
    {
        await _room.PlanTripAsync();
        foreach (var need in (string[])["picks", "\"throw rope\"", "\"spud bar\"", "\"first-aid kit\"", "auger"])
        {
            Assert.Null((await _room.SayAsync($"trip need mine:{need}")).Problem);
        }

        await _room.SayAsync("trip bring item:hub");
        await _room.SayAsync("trip bring item:car");
        await _room.SayAsync("trip bring item:sled");

        Assert.Equal("Trip 1 needs nothing more", (await _room.SayAsync("trip need")).Headline);
    }

    [Fact]
    public async Task Bring_WithoutAnItem_OffersWhatIsInTheBoxAsButtonsThatWork()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("box add item:\"shelter for 4, heater, auger 8in, shelter for 7, braid 6lb\"");

        var offer = await _room.SayAsync("trip bring");

        Assert.Equal(4, offer.Actions.Count);
        Assert.Equal([16, 15], offer.Choices.Select(list => list.Choices.Count));
        foreach (var action in offer.Actions)
        {
            Assert.Null((await _room.SayAsync(action.Command)).Problem);
        }

        var brought = (await _room.SayAsync("trip show")).Lines.Single(line => line.StartsWith("Brought:", StringComparison.Ordinal));
        Assert.Equal("Brought: 1 hub, 1 small heater, 1 wide hand auger, 1 shelter for 7.", brought);
    }

    // The next thing that is brought gets the number of the one that was taken back.
    [Fact]
    public async Task Bring_ShelterIsTakenBack_NobodyIsToldToSitInTheNextThing()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip bring item:hub");
        await _room.SayAsync("trip seats");
        await _room.SayAsync("trip bring item:hub count:0");
        await _room.SayAsync("trip bring item:cabin");

        Assert.DoesNotContain((await _room.SayAsync("trip pack")).Lines, line => line.Contains("you sit in", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Bring_UnknownGear_OffersTheNearestAndToAddItAsOnesOwn()
    {
        await _room.PlanTripAsync();

        var refusal = await _room.SayAsync("trip bring item:\"ice shanty\"");

        Assert.Contains("item:\"ice shanty\" as:shelter seats:4", refusal.Problem, StringComparison.Ordinal);
        var shelter = refusal.Actions.Single(action => action.Label == "My own shelter");
        Assert.Equal((ActionKind.Form, "/trip bring trip:1 item:\"ice shanty\" as:shelter"), (shelter.Kind, shelter.Command));
        Assert.Equal(["seats", "weight"], shelter.Fields);
        Assert.Equal("Ana brings 1 ice shanty", (await _room.SayAsync($"{shelter.Command} seats:3")).Headline);
        foreach (var action in refusal.Actions.Where(action => action.Kind == ActionKind.Run).Concat(refusal.Choices.Single().Choices))
        {
            Assert.Null((await _room.SayAsync(action.Command)).Problem);
        }
    }

    [Fact]
    public async Task Bring_OwnGearOfAnEarlierTrip_IsKnownByItsName()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip bring item:\"red barn\" as:shelter seats:5 weight:60kg");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"2027-01-30 07:00\"");

        Assert.Equal("Ana brings 1 red barn", (await _room.SayAsync("trip bring item:\"Red Barn\" trip:2")).Headline);
        Assert.Contains("Seats for 1 person", (await _room.SayAsync("trip seats trip:2")).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Need_OfOneAlone_CountsAPerson()
    {
        await _room.PlanTripAsync();

        Assert.Contains("ice picks: 1 person, one each: 1; 0 brought.", (await _room.SayAsync("trip need")).Lines);
    }

    [Fact]
    public async Task Need_EverythingIsMissing_ShowsItsArithmeticWithAButtonEach()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip join answer:in party:13", "Bo");
        await _room.SayAsync("trip bring item:cabin", "Bo");
        await _room.SayAsync("trip bring item:\"small heater\"", "Bo");

        var need = await _room.SayAsync("trip need");

        Assert.True(need.Lines.Count <= 8);
        Assert.Contains("throw rope, spud bar, first-aid kit: 14 people ÷ 8, rounded up: 2; 0 brought.", need.Lines);
        Assert.Contains("CO alarm: 1 heater, a shelter each: 1; 0 brought.", need.Lines);
        Assert.Equal(9, need.Actions.Count(action => action.Label.StartsWith("Mine: ", StringComparison.Ordinal)));
        foreach (var action in need.Actions.Where(action => action.Kind == ActionKind.Run).Concat(need.Choices.Single().Choices))
        {
            Assert.Null((await _room.SayAsync(action.Command)).Problem);
        }

        Assert.Contains("Going without: seats under cover (Ana answers for it)", string.Join(' ', (await _room.SayAsync("trip need")).Lines), StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
