using System.Globalization;
using System.Text.RegularExpressions;

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

    [Fact]
    public async Task Carry_SixAtACabinForFourHours_GivesNoFigure()
    {
        await using var room = await RoomAsync("clear:30in");

        var reply = await room.SayAsync($"{Ask} people:6 shelter:cabin stay:4h");

        Assert.Contains("ask the local authority", reply.Headline, StringComparison.Ordinal);
        Assert.DoesNotContain(reply.Figures, figure => figure.Key == "ice.required");
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
    public async Task Carry_WhereNoRuleHelps_SaysSo(string line, string says)
    {
        await using var room = await RoomAsync("clear:14in");

        var reply = await room.SayAsync(line);

        Assert.Contains(says, reply.Headline, StringComparison.Ordinal);
        Assert.Contains("Local officers and authorities have the last word.", reply.Cautions);
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
