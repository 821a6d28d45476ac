using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Core.Ice;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Tests.Ice;

public sealed partial class IceCarryTests
{
    private const string Ask = "/ice carry water:\"Loon Basin\" spot:\"north bay\" warmest:10F";

    [Fact]
    public async Task Carry_SixAtACabinForAnHour_AsksForTenInchesAndShowsItsWorking()
    {
        await using var room = await RoomAsync("clear:12in");

        var reply = await room.SayAsync($"{Ask} people:6 shelter:cabin stay:1h");

        // Project figure for a gathering: 10 in (New Hampshire, as reported); 8 √(0.82) is 7.3 in (Smith 2004).
        Assert.Contains(reply.Lines, line => line.StartsWith("Asked for: 10 in (25.4 cm)", StringComparison.Ordinal));
        Assert.Contains(reply.Reasons, line => line.Contains("8 √W", StringComparison.Ordinal));
        Assert.Contains(reply.Lines, line => line.Contains("least 12 in", StringComparison.Ordinal));
        Assert.Contains("no clearance", reply.Headline, StringComparison.Ordinal);
        Assert.Equal(2, reply.Cautions.Count(line => line.Contains("No ice is safe", StringComparison.Ordinal) || line.Contains("last word", StringComparison.Ordinal)));
    }

    // The project's figures: 6 in for one person on foot, 10 in for a gathering.
    [Theory]
    [InlineData("weight:600lb", "Asked for: 10 in")]
    [InlineData("weight:100lb", "Asked for: 6 in")]
    public async Task Carry_AWeightThatNobodyNames_IsNoLoneWalkersPastASecondPersons(string said, string asked)
    {
        await using var room = await RoomAsync("clear:9in");

        Assert.Contains((await room.SayAsync($"{Ask} {said}")).Lines, line => line.StartsWith(asked, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Carry_SixAtACabinForFourHours_GivesNoFigure()
    {
        await using var room = await RoomAsync("clear:30in");

        var reply = await room.SayAsync($"{Ask} people:6 shelter:cabin stay:4h");

        Assert.Contains("ask the local authority", reply.Headline, StringComparison.Ordinal);
        Assert.Equal(["ice.load"], reply.Figures.Select(figure => figure.Key));
        Assert.DoesNotContain(reply.Lines, line => line.Contains("30 in", StringComparison.Ordinal) || line.Contains("The figure", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Carry_WhatNobodySaid_IsNamedAsAssumed()
    {
        await using var room = await RoomAsync("clear:12in");

        Assert.Contains("Assumed: one person.", (await room.SayAsync(Ask)).Lines);
        Assert.Contains("Assumed: 2 h at the most in one place.", (await room.SayAsync($"{Ask} people:6")).Lines);
    }

    [Fact]
    public async Task Carry_NothingMeasuredTodayAtThatSpot_GivesNoAnswer()
    {
        await using var room = await RoomAsync("clear:12in");

        var elsewhere = await room.SayAsync("/ice carry water:\"Loon Basin\" spot:\"south point\" warmest:10F");
        room.Now += TimeSpan.FromHours(25);
        var later = await room.SayAsync(Ask);

        Assert.Equal("Loon Basin, south point: no measurement of today at that spot: no answer", elsewhere.Headline);
        Assert.Equal("Loon Basin, north bay: no measurement of today at that spot: no answer", later.Headline);
    }

    [Theory]
    [InlineData("/ice carry water:\"Loon Basin\" spot:\"north bay\"", "how warm it has been")]
    [InlineData("/ice carry water:\"Loon Basin\" spot:\"north bay\" warmest:40F", "thawed")]
    [InlineData("/ice carry water:\"Loon Basin\" spot:\"the narrows\" warmest:10F", "stay off")]
    [InlineData($"{Ask} machine:car weight:4000lb", "do not drive")]
    [InlineData($"{Ask} machine:car", "do not drive")]
    public async Task Carry_WhereNoRuleHelps_SaysSo(string line, string says)
    {
        await using var room = await RoomAsync("clear:14in");

        var reply = await room.SayAsync(line);

        Assert.Contains(says, reply.Headline, StringComparison.Ordinal);
        Assert.Contains("Local officers and authorities have the last word.", reply.Cautions);
    }

    [Fact]
    public async Task Carry_NoWaterSaid_SaysWhichItTakes()
    {
        await using var room = await RoomAsync("clear:14in");

        var asked = await room.SayAsync("/ice carry spot:\"north bay\"");

        Assert.StartsWith("Loon Basin, north bay: ", asked.Headline, StringComparison.Ordinal);
        Assert.Contains("Assumed: Loon Basin, your crew's only water, one person.", asked.Lines);
        Assert.Equal("Loon Basin", asked.Actions[0].Options["water"]);
        await room.SayAsync("/crew setup water:\"Tamarack Bay\"");
        Assert.StartsWith("Which water? This crew has Loon Basin and Tamarack Bay.", (await room.SayAsync("/ice carry spot:\"north bay\"")).Problem, StringComparison.Ordinal);
    }

    // Cold hands press a button rather than type a temperature.
    [Fact]
    public async Task Carry_AirNotSaid_AsksWithButtonsThatAnswerIt()
    {
        await using var room = await RoomAsync("clear:14in");
        room.Now += TimeSpan.FromHours(2);

        var asked = await room.SayAsync("/ice carry water:\"Loon Basin\" spot:\"north bay\"");

        Assert.Contains("Measured 2 h ago. Has it been below freezing since?", asked.Lines.Single(line => line.StartsWith("Measured", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Equal(["Froze the last 24 h", "Froze since measured", "Other air", "Why", "Share"], asked.Actions.Select(action => action.Label));
        Assert.Equal(["freezing-since", "warmest", "air"], asked.Actions[2].Fields);

        // 6 in on foot; doubled while nobody knows of 6 of the last 24 hours (Minnesota DNR, 24 Dec 2013).
        Assert.All(asked.Actions.Take(3), action => Assert.Equal("Loon Basin", action.Options["water"]));
        var wholeDay = await room.SayAsync(asked.Actions[0].Command);
        var sinceThen = await room.SayAsync(asked.Actions[1].Command);
        Assert.Contains(wholeDay.Lines, line => line.StartsWith("Asked for: 6 in", StringComparison.Ordinal));
        Assert.Contains(sinceThen.Lines, line => line.StartsWith("Asked for: 12 in", StringComparison.Ordinal));
        Assert.All([wholeDay, sinceThen], answer => Assert.Contains("meets the published figure", answer.Headline, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("freezing-since:\"1h ago\"", "thawed")] // after it was measured
    [InlineData("freezing-since:\"20h ago\"", "meets")]
    [InlineData("freezing-since:\"20h ago\" air:33F", "thawed")] // it thaws now
    [InlineData("freezing-since:\"20h ago\" warmest:40F", "meets")] // warm before it froze: 4 of 24 hours
    public async Task Carry_FreezingSince_CountsFromThere(string air, string says)
    {
        await using var room = await RoomAsync("clear:14in");
        room.Now += TimeSpan.FromHours(2);

        Assert.Contains(says, (await room.SayAsync($"/ice carry water:\"Loon Basin\" spot:\"north bay\" {air}")).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Carry_FreezingSinceTheFuture_IsRefused()
    {
        await using var room = await RoomAsync("clear:14in");

        Assert.Contains("in the future", (await room.SayAsync($"{Ask} freezing-since:\"tomorrow 08:00\"")).Problem, StringComparison.Ordinal);
    }

    // Only what can matter is read; the answer is that of all reports of the water together.
    [Fact]
    public async Task Carry_AmongManyReports_AnswersAsAllOfThemDo()
    {
        await using var room = await RoomAsync("clear:12in");
        string[] spots = ["north bay", "the north bay", "south point", "east bay reeds", "east bay"];
        var random = new Random(7);
        for (var number = 0; number < 120; number++)
        {
            room.Now += TimeSpan.FromMinutes(random.Next(1, 40));
            string what = random.Next(12) switch
            {
                0 => "hazard:\"open water\"",
                1 => "total:9in kind:layered",
                2 => "clear:3in",
                3 => "clear:9in air:34F",
                4 => "white:10in",
                _ => $"clear:{random.Next(5, 16)}in air:{random.Next(-10, 20)}F",
            };
            var spot = random.Next(9) == 0 ? "" : $"spot:\"{spots[random.Next(spots.Length)]}\"";
            Assert.Null((await room.SayAsync($"/ice report water:\"Loon Basin\" {spot} {what}")).Problem);
            if (random.Next(6) == 0)
            {
                await room.SayAsync($"/ice withdraw report:{random.Next(1, number + 1)} reason:test");
            }

            await AssertAsAllAsync(room, spots[random.Next(spots.Length)], random.Next(2) == 0 ? "warmest:10F" : "freezing-since:\"10h ago\"");
        }
    }

    private static async Task AssertAsAllAsync(CrewRoom room, string spot, string air)
    {
        IReadOnlyList<FiledIce> all = [];
        await room.WriteAsync(async session => all = await new IceReportRepository(session).SinceAsync(1, IceSeason.StartOf(room.Now)));
        var known = air.StartsWith('w') ? new AirSince(Temperature.FromDegreesFahrenheit(10), null) : new AirSince(null, room.Now.AddHours(-10));
        var expected = CombinedReports.At([.. all.Select(filed => filed.ToReport())], spot, known, room.Now);

        var reply = await room.SayAsync($"/ice carry water:\"Loon Basin\" spot:\"{spot}\" {air}");

        if (expected.Why is { } why)
        {
            Assert.EndsWith(FormattableString.Invariant(why), reply.Headline, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(expected.Least!.Value.Centimeters, reply.Figures.Single(figure => figure.Key == "ice.effective").Value, 1e-9);
        }
    }

    /// <summary>Lists for supervised moving loads (US Army Corps, City of Edmonton): 2 in or 5 cm a person, 18 cm a car.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("people:2")]
    [InlineData("machine:snowmobile weight:600lb")]
    [InlineData("machine:car weight:4400lb permitted:yes")]
    public async Task Carry_WhateverIsAsked_NeverShowsAFigureThatMustNotBeUsed(string load)
    {
        await using var room = await RoomAsync("clear:30in");
        foreach (var authority in (string[])["minnesota", "saskatchewan", "ontario", "canadian-red-cross", "michigan", "new-hampshire"])
        {
            await room.SayAsync($"/ice rules authority:{authority}");

            var reply = await room.SayAsync($"{Ask} {load}");

            var text = string.Join('\n', [reply.Headline, .. reply.Lines, .. reply.Reasons]);
            Assert.DoesNotContain("Edmonton", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Corps", text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"(?<![\d.])(2 in|5 cm|18 cm)", text);
            if (reply.Figures.FirstOrDefault(figure => figure.Key == "ice.required") is { } required)
            {
                Assert.True(required.Value >= 15.24, $"{authority} {load}: {required.Value}");
            }
        }
    }

    [Theory]
    [InlineData(CrewSpeaks.Customary)]
    [InlineData(CrewSpeaks.Metric)]
    public async Task Carry_InEitherUnits_GivesTheSameVerdictAndNeverFlatters(CrewSpeaks units)
    {
        // 15.23 cm is just less than 6 in, which are 15.24 cm by the definition of the inch.
        await using var room = await RoomAsync("clear:15.23cm");
        await room.SayAsync($"/crew setup units:{units.ToString().ToLowerInvariant()}");

        var reply = await room.SayAsync(Ask);

        Assert.Contains("less was measured", reply.Headline, StringComparison.Ordinal);
        var measured = Figure().Match(reply.Lines.Single(line => line.StartsWith("Measured", StringComparison.Ordinal)));
        Assert.True(double.Parse(measured.Groups["number"].Value, CultureInfo.InvariantCulture) * (measured.Groups["unit"].Value == "in" ? 2.54 : 1) <= 15.23);
    }

    [GeneratedRegex("least (?<number>[0-9.]+) (?<unit>in|cm)")]
    private static partial Regex Figure();

    private static async Task<CrewRoom> RoomAsync(string ice)
    {
        var room = new CrewRoom();
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        var filed = await room.SayAsync($"/ice report water:\"Loon Basin\" spot:\"north bay\" {ice}");
        Assert.Null(filed.Problem);
        return room;
    }
}

/// <summary>What a crew speaks in.</summary>
public enum CrewSpeaks
{
    Customary,
    Metric,
}
