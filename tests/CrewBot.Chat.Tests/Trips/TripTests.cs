using CrewBot.Chat.Commands;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Tests.Trips;

public sealed class TripTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Plan_WaterAndMeetAlone_AssumesTheReturnAndPutsThePlannerOnIt()
    {
        var card = await PlanAsync();

        Assert.Null(card.Problem);
        Assert.Equal("Trip 1: Loon Basin, Sun 17 Jan 07:00, off the ice by 16:00", card.Headline);
        Assert.Contains("In: 1 person: Ana.", card.Lines);
        Assert.True(card.Lines.Count <= 8);
    }

    // Clocks in Winnipeg went from 02:00 to 03:00 on 14 March 2027 (IANA tz database): 07:00 is 12:00 UTC, one hour earlier than the day before.
    [Theory]
    [InlineData("2027-03-13 07:00", "Sat 13 Mar 07:00")]
    [InlineData("2027-03-14 07:00", "Sun 14 Mar 07:00")]
    [InlineData("2027-03-14 02:30", "Sun 14 Mar 03:30")]
    public async Task Plan_AcrossAClockChange_MeetsByTheCrewsClock(string meet, string shown)
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg water:\"Loon Basin\"");

        Assert.Contains(shown, (await _room.SayAsync($"trip plan water:\"Loon Basin\" meet:\"{meet}\"")).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" return:06:00", "give a later one, such as return:16:00, or return:\"2027-01-18 06:00\" across midnight.")]
    [InlineData("trip plan water:\"Loon Basin\" meet:\"2027-01-02 07:00\"", "has passed")]
    [InlineData("trip plan water:\"Loon Basin\" meet:soon", "can't read 'soon'")]
    [InlineData("trip plan water:\"Lune Basin\" meet:07:00", "is no water of this crew")]
    [InlineData("trip join answer:in party:0", "party: '0' is not a whole number from 1 to 40.")]
    [InlineData("trip join answer:in party:500", "party: '500' is not a whole number from 1 to 40.")]
    [InlineData("trip join answer:in party:2 children:2", "party counts you too")]
    [InlineData("trip join answer:in with:Zed", "'Zed' has not answered for this trip")]
    [InlineData("trip join trip:9 answer:in", "There is no trip 9.")]
    [InlineData("trip bring item:hub seats:-3", "seats: '-3' is not a whole number from 1 to 12.")]
    [InlineData("trip bring item:smokehouse", "'smokehouse' is not known. Gear of your own:")]
    [InlineData("trip bring item:\"2 augers\"", "How many of it goes into count: /trip bring trip:1 item:\"power auger\" count:2")]
    [InlineData("trip bring item:smokehouse as:shelter", "How many sit in 'smokehouse'?")]
    [InlineData("trip need mine:\"CO alarm\"", "No CO alarm is missing")]
    [InlineData("trip need waive:picks", "ice picks can be waived by nobody")]
    [InlineData("trip back", "You are not out on this trip")]
    [InlineData("trip late by:3min", "out of range")]
    [InlineData("trip out back:2027-01-10 10:00", "has passed")]
    public async Task BadInput_OnATrip_IsRefusedInOneLine(string line, string part)
    {
        await PlanAsync();

        var reply = await _room.SayAsync(line);

        Assert.Contains(part, reply.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', reply.Problem!);
    }

    // A crew's own file may have known the fish, and may be gone: whoever is out there must still be looked for.
    [Theory]
    [InlineData("trip show")]
    [InlineData("trip pack")]
    [InlineData("trip out back:10:00")]
    public async Task Answer_FishThatIsNotKnownAnyMore_GoesByItsKey(string line)
    {
        await PlanAsync();
        await _room.WriteAsync(async session =>
        {
            var trips = new TripRepository(session);
            await trips.SaveAsync((await trips.FindAsync(1))! with { Species = "basin-herring" });
        });
        _room.Now += TimeSpan.FromHours(12);

        Assert.Null((await _room.SayAsync(line)).Problem);
        Assert.Contains("After basin-herring.", (await _room.SayAsync("trip show")).Lines);
    }

    [Fact]
    public async Task Join_PastTrip_IsOver()
    {
        await PlanAsync();
        _room.Now += TimeSpan.FromDays(2);

        Assert.Contains("it is over", (await _room.SayAsync("trip join trip:1 answer:in", "Bo")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Claim_LastAugerByTwoAtOnce_OneGetsItAndTheOtherIsToldWhoHasIt()
    {
        await PlanAsync();
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
        await PlanAsync();
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
        await PlanAsync();
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
        await PlanAsync();
        await _room.SayAsync("trip bring item:hub");
        await _room.SayAsync("trip seats");
        await _room.SayAsync("trip bring item:hub count:0");
        await _room.SayAsync("trip bring item:cabin");

        Assert.DoesNotContain((await _room.SayAsync("trip pack")).Lines, line => line.Contains("you sit in", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Bring_UnknownGear_OffersTheNearestAndToAddItAsOnesOwn()
    {
        await PlanAsync();

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
    public async Task Need_OfOneAlone_CountsAPerson()
    {
        await PlanAsync();

        Assert.Contains("ice picks: 1 person, one each: 1; 0 brought.", (await _room.SayAsync("trip need")).Lines);
    }

    [Fact]
    public async Task Need_EverythingIsMissing_ShowsItsArithmeticWithAButtonEach()
    {
        await PlanAsync();
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

    [Fact]
    public async Task Bring_OwnGearOfAnEarlierTrip_IsKnownByItsName()
    {
        await PlanAsync();
        await _room.SayAsync("trip bring item:\"red barn\" as:shelter seats:5 weight:60kg");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"2027-01-30 07:00\"");

        Assert.Equal("Ana brings 1 red barn", (await _room.SayAsync("trip bring item:\"Red Barn\" trip:2")).Headline);
        Assert.Contains("Seats for 1 person", (await _room.SayAsync("trip seats trip:2")).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Log_OnATrip_TakesItsWaterAndSaysSo()
    {
        await _room.SayAsync("crew setup water:\"Tamarack Bay\"");
        await PlanAsync();
        await _room.SayAsync("log perch 9in water:\"Tamarack Bay\"");
        _room.Now += TimeSpan.FromHours(12);

        var reply = await _room.SayAsync("log walleye 20in");

        Assert.Contains(reply.Lines, line => line.Contains("Loon Basin as on trip 1", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Log_OnATripThatIsAfterAFish_TakesSpeciesAndDepthAndSaysSo()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" species:walleye depth:24ft");
        Assert.Contains("species is missing", (await _room.SayAsync("log 20in")).Problem, StringComparison.Ordinal);
        _room.Now += TimeSpan.FromHours(12);

        var reply = await _room.SayAsync("log 20in");

        Assert.Contains(reply.Lines, line => line.EndsWith("Assumed: walleye, Loon Basin, 24 ft (7.3 m) as on trip 1.", StringComparison.Ordinal));
        Assert.Contains("'blurry' not understood", (await _room.SayAsync("log blurry 21in")).Problem, StringComparison.Ordinal);
        Assert.Contains((await _room.SayAsync("log perch 9in 18ft")).Lines, line => line.EndsWith("Assumed: Loon Basin as on trip 1.", StringComparison.Ordinal));
        Assert.Contains((await _room.SayAsync("log 21in")).Lines, line => line.EndsWith("Assumed: walleye, Loon Basin as on trip 1, 18 ft (5.5 m) as at #2.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Log_OnATripByAnotherAngler_AsksForTheSpecies()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" species:walleye");
        _room.Now += TimeSpan.FromHours(12);

        Assert.Contains("species is missing", (await _room.SayAsync("log 20in", "Bo")).Problem, StringComparison.Ordinal);
    }

    // Met at 07:00 UTC, the first was out at 06:30, the last back at 17:00: what was caught then on that water counts.
    [Fact]
    public async Task Leaders_OfATrip_CountFromTheFirstOutToTheLastBackOnItsWater()
    {
        await PlanAsync();
        await _room.SayAsync("crew setup water:\"Tamarack Bay\"");
        await _room.SayAsync("trip join answer:in", "Bo");
        Assert.Contains("No trip has begun yet", (await _room.SayAsync("catch leaders span:trip")).Problem, StringComparison.Ordinal);
        var day = new DateTimeOffset(2027, 1, 17, 0, 0, 0, TimeSpan.Zero);
        foreach (var (hour, who, line) in ((double, string, string)[])
        [
            (6, "Ana", "catch log species:walleye length:30in water:\"Loon Basin\""), (6.5, "Ana", "trip out"),
            (6.75, "Ana", "catch log species:walleye length:20in"), (8, "Bo", "trip out back:17:00"),
            (9, "Bo", "catch log species:walleye length:21in"), (10, "Bo", "catch log species:walleye length:31in water:\"Tamarack Bay\""),
            (16, "Ana", "trip back"), (16.5, "Bo", "catch log species:walleye length:22in water:\"Loon Basin\""), (17, "Bo", "trip back"),
            (18, "Bo", "catch log species:walleye length:32in water:\"Loon Basin\""),
        ])
        {
            _room.Now = day.AddHours(hour);
            Assert.Null((await _room.SayAsync(line, who)).Problem);
        }

        _room.Now = day.AddDays(3);
        var board = await _room.SayAsync("catch leaders span:trip");

        Assert.Equal("Leaders, trip 1 on Loon Basin: 3 fish", board.Headline);
        Assert.Contains("Longest walleye: 22 in (55.9 cm), Bo (#5).", board.Lines);
        Assert.Equal(board.Headline, (await _room.SayAsync("catch leaders trip:1")).Headline);
        Assert.StartsWith("Leaders, this season: ", (await _room.SayAsync("catch leaders")).Headline, StringComparison.Ordinal);
        Assert.Equal("Leaders, trip 1 on Tamarack Bay: 1 fish", (await _room.SayAsync("catch leaders trip:1 water:\"Tamarack Bay\"")).Headline);
        Assert.Contains("no trip 7", (await _room.SayAsync("catch leaders trip:7")).Problem, StringComparison.Ordinal);
        Assert.Contains("goes with span:trip", (await _room.SayAsync("catch leaders span:month trip:1")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Seats_AfterADropOut_MoveNobodyWhoCanStay()
    {
        await PlanAsync();
        await _room.SayAsync("trip bring item:hub");
        await _room.SayAsync("trip join answer:in party:3 children:2", "Bo");
        await _room.SayAsync("trip bring item:\"red barn\" as:shelter seats:5", "Bo");
        await _room.SayAsync("trip join answer:in", "Cy");
        var before = await _room.SayAsync("trip seats");
        await _room.SayAsync("trip join answer:out", "Cy");

        var after = await _room.SayAsync("trip seats");

        Assert.Null(before.Problem);
        Assert.Equal(4, after.Figures.Single(figure => figure.Key == "trip.people").Value);
        Assert.Equal(0, after.Figures.Single(figure => figure.Key == "trip.moved").Value);
    }

    [Fact]
    public async Task Seats_PictureWhyAndShare_OnlyLook()
    {
        await PlanAsync();
        await _room.SayAsync("trip bring item:hub");
        var told = await _room.SayAsync("trip seats");
        await _room.SayAsync("trip join answer:in", "Bo");
        var before = await _room.BytesAsync();

        foreach (var action in told.Actions)
        {
            var looked = await _room.SayAsync(action.Command);
            Assert.Contains("Not told yet: /trip seats tells it.", looked.Lines);
            Assert.Single(looked.Pictures);
        }

        Assert.Equal([ActionKind.Picture, ActionKind.Why, ActionKind.Share], told.Actions.Select(action => action.Kind));
        Assert.Equal(before, await _room.BytesAsync());
        await _room.SayAsync("trip seats");
        Assert.DoesNotContain((await _room.SayAsync("trip seats look:yes")).Lines, line => line.StartsWith("Not told", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Seats_TooFew_NamesTheObstacle()
    {
        await PlanAsync();
        await _room.SayAsync("trip join answer:in party:5");
        await _room.SayAsync("trip bring item:hub");

        Assert.Equal("Not everybody can sit. 5 people and 4 seats: 1 seat missing.", (await _room.SayAsync("trip seats")).Problem);
    }

    [Fact]
    public async Task Back_WithLinesLeftDown_ClosesThem()
    {
        await PlanAsync();
        _room.Now += TimeSpan.FromHours(12);
        await _room.SayAsync("trip out");
        await _room.SayAsync("lines down lines:2");
        _room.Now += TimeSpan.FromHours(3);

        var reply = await _room.SayAsync("trip back");

        Assert.Contains("2 lines left down: closed now.", reply.Lines);
        Assert.Contains("no lines down", (await _room.SayAsync("lines up")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tomorrow 7am")]
    [InlineData("sun 7:00 am")]
    [InlineData("2027-01-17 07:00")]
    public async Task Plan_TimeByEitherClock_IsTheSame(string meet)
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");

        Assert.StartsWith("Trip 1: Loon Basin, Sun 17 Jan 07:00", (await _room.SayAsync($"trip plan water:\"Loon Basin\" meet:\"{meet}\"")).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Out_OnAnotherDayThanTheTrips_NamesTheDayOfComingBack()
    {
        await PlanAsync();
        Assert.Equal("Ana is on the ice, back by Sun 17 Jan 16:00", (await _room.SayAsync("trip out")).Headline);
        await _room.SayAsync("trip back");
        _room.Now += TimeSpan.FromHours(12);

        Assert.Equal("Ana is on the ice, back by 16:00", (await _room.SayAsync("trip out")).Headline);
    }

    [Fact]
    public async Task Show_PartyPastItsTimeAndGrace_IsOverdueUntilItIsBack()
    {
        await PlanAsync();
        _room.Now += TimeSpan.FromHours(12);
        await _room.SayAsync("trip out back:13:00");
        _room.Now += TimeSpan.FromHours(5) + TimeSpan.FromMinutes(31);

        Assert.Contains(await LinesAsync(), line => line.Contains("OVERDUE", StringComparison.Ordinal));
        await _room.SayAsync("trip late by:+1h");
        Assert.DoesNotContain(await LinesAsync(), line => line.Contains("OVERDUE", StringComparison.Ordinal));
        Assert.Null((await _room.SayAsync("trip back")).Problem);
    }

    [Fact]
    public async Task Cancel_ByAnotherMember_IsRefusedAndWithSomebodyOutToo()
    {
        await PlanAsync();
        await _room.SayAsync("trip join answer:in", "Bo", Role.Member);

        Assert.Contains("Trip 1 is Ana's", (await _room.SayAsync("trip cancel", "Bo", Role.Member)).Problem, StringComparison.Ordinal);
        await _room.SayAsync("trip out", "Bo", Role.Member);
        Assert.Contains("Bo is still on the ice", (await _room.SayAsync("trip cancel")).Problem, StringComparison.Ordinal);
        await _room.SayAsync("trip back", "Bo", Role.Member);
        Assert.EndsWith("Cancelled", (await _room.SayAsync("trip cancel")).Headline, StringComparison.Ordinal);
        Assert.Contains("No trip is planned", (await _room.SayAsync("trip show")).Problem, StringComparison.Ordinal);
    }

    // One person at 100 kg and a cabin of 140 kg.
    [Fact]
    public async Task Load_WithoutAMeasurement_GivesNoThickness()
    {
        await PlanAsync();
        await _room.SayAsync("trip bring item:cabin");

        var reply = await _room.SayAsync("trip load");

        Assert.Equal(240, reply.Figures.Single(figure => figure.Key == "trip.load").Value, tolerance: 1e-9);
        Assert.Contains(reply.Lines, line => line.StartsWith("No spot was named, so nothing measured stands beside it", StringComparison.Ordinal));
        Assert.DoesNotContain(reply.Lines.Append(reply.Headline), line => line.Contains(" in ", StringComparison.Ordinal) && line.Contains("cm", StringComparison.Ordinal));
    }

    // Two people at 100 kg and a cabin of 140 kg: 340 kg, 0.375 short tons; 8 √0.375 = 4.9 in for what stands (Smith 2004), and
    // the table of the guides asks for more of a gathering.
    [Fact]
    public async Task Load_MeasuredThereToday_IsSetBesideThePublishedRules()
    {
        await PlanAsync();
        await _room.SayAsync("trip join answer:in", "Bo");
        await _room.SayAsync("trip bring item:cabin");
        Assert.Null((await _room.SayAsync("ice report water:\"Loon Basin\" spot:\"north hump\" clear:5in")).Problem);

        var thin = await _room.SayAsync("trip load spot:\"north hump\" warmest:10F");
        var elsewhere = await _room.SayAsync("trip load spot:\"south bay\" warmest:10F");

        Assert.Contains(thin.Lines, line => line.StartsWith("Measured there: least 5 in", StringComparison.Ordinal));
        Assert.Contains(thin.Lines, line => line.Contains("LESS was measured", StringComparison.Ordinal));
        Assert.Contains(elsewhere.Lines, line => line.StartsWith("No measurement of today at that spot: no answer", StringComparison.Ordinal));
        Assert.DoesNotContain(elsewhere.Lines, line => line.Contains("ask for", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Pack_IceReportedAfterwards_IsOnTheCardWithItsHour()
    {
        await PlanAsync();
        Assert.Contains((await _room.SayAsync("trip pack")).Lines, line => line.StartsWith("Ice: the board has no fresh measurement", StringComparison.Ordinal));
        await _room.SayAsync("ice report water:\"Loon Basin\" spot:\"north hump\" clear:5in");

        Assert.Contains((await _room.SayAsync("trip pack")).Lines, line =>
            line.StartsWith("Ice: north hump, 5 in (12.7 cm) clear, by Ana, Sat 16 Jan 20:00", StringComparison.Ordinal));
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task<Reply> PlanAsync()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        return await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\"");
    }

    private async Task<IReadOnlyList<string>> LinesAsync() => (await _room.SayAsync("trip show")).Lines;
}
