using System.Globalization;
using CrewBot.Core.Ice;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;
using CrewBot.Storage.Outbox;
using CrewBot.Storage.Tests.Outbox;

namespace CrewBot.Storage.Tests.Ice;

/// <summary>A report and its relays, brought to its channels while the platform and the process fail.</summary>
public sealed class IceRelayFaultTests : PumpTest
{
    private const int Limit = 60_000;
    private const int Channels = 500;

    public static TheoryData<string> Faults => ["none", "limited", "outage", "answer lost", "restart"];

    [Theory(Timeout = Limit)]
    [MemberData(nameof(Faults))]
    public async Task Relays_WhateverFails_ReachEachChannelOnceAndInOrder(string fault)
    {
        string[] places = ["alpha-ice", "bravo-ice", "charlie-ice"];
        foreach (var place in places)
        {
            Exception[] faults = fault switch
            {
                "limited" => [new HttpRequestException("429")],
                "outage" => [.. Enumerable.Repeat(new HttpRequestException("503"), 4)],
                "answer lost" => [ScriptedSender.LostAnswer],
                _ => [],
            };
            Sender.FailAt(place, faults);
        }

        await RelayAsync(1, places, "first");
        await RelayAsync(2, places, "second");
        var pump = Run();
        if (fault == "restart")
        {
            await NextAsync();
            await pump.DisposeAsync();
            pump = Run();
        }

        await using (pump)
        {
            foreach (var place in places)
            {
                await BroughtAsync(1, place);
                await BroughtAsync(2, place);
            }

            // A correction finds every copy.
            await RelayAsync(1, places, "corrected");
            foreach (var place in places)
            {
                await BroughtAsync(1, place);
            }
        }

        Assert.Equal(6, Sender.Shown.Count);
        Assert.Equal(3, Sender.Shown.Values.Count(body => body.StartsWith("corrected", StringComparison.Ordinal)));
        Assert.All(places, place => Assert.Equal(
            [$"corrected {place}", $"second {place}"],
            Sender.Shown.Where(shown => shown.Value.EndsWith(place, StringComparison.Ordinal)).OrderBy(shown => int.Parse(shown.Key[1..], CultureInfo.InvariantCulture)).Select(shown => shown.Value)));
    }

    [Fact(Timeout = Limit)]
    public async Task Relays_ToFiveHundredChannels_ReachEachOnce()
    {
        string[] places = [.. Enumerable.Range(0, Channels).Select(number => $"channel-{number}")];
        await RelayAsync(1, places, "report");

        await using var pump = Run();
        foreach (var place in places)
        {
            await BroughtAsync(1, place);
        }

        Assert.Equal(Channels, Sender.Shown.Values.Distinct().Count());
        Assert.Equal(Channels, Sender.Shown.Count);
    }

    [Fact]
    public async Task WriteAsync_FailsAfterAReport_KeepsNeitherReportNorRelay()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() => WriteAsync(Alpha, async session =>
        {
            var member = await new MemberRepository(session).FindOrAddAsync("ana", "Ana");
            var water = await new WaterRepository(session).AddAsync("Loon Basin");
            await new IceReportRepository(session).AddAsync(
                new IceEntry(member.Id, water, Morning, new IcePage { Hazards = [IceHazard.OpenWater] }));
            await new PostRepository(session).SayAsync("ice/1/alpha-ice", "alpha-ice", "report", Morning);
            throw new InvalidOperationException();
        }));

        Assert.Null(await FindAsync("ice/1/alpha-ice"));
        Assert.Null(await ReadAsync(Alpha, session => new IceReportRepository(session).FindAsync(1)));
    }

    private Task RelayAsync(int report, string[] places, string body) => WriteAsync(Alpha, async session =>
    {
        foreach (var place in places)
        {
            await new PostRepository(session).SayAsync($"ice/{report}/{place}", place, $"{body} {place}", Clock.GetUtcNow());
        }
    });

    // A pause after a failure passes on the test's clock alone.
    private async Task BroughtAsync(int report, string place)
    {
        while (await FindAsync($"ice/{report}/{place}") is not { NextAt: null })
        {
            Advance(TimeSpan.FromSeconds(20));
            await Task.Yield();
            Cancellation.ThrowIfCancellationRequested();
        }
    }
}
