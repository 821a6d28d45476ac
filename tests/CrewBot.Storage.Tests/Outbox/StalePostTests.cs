using CrewBot.Storage.Outbox;

namespace CrewBot.Storage.Tests.Outbox;

/// <summary>News that is none when it comes late.</summary>
public sealed class StalePostTests : PumpTest
{
    private const int Limit = 30_000;

    private static readonly PostManner TenMinutes = new() { GoodFor = TimeSpan.FromMinutes(10) };

    [Fact(Timeout = Limit)]
    public async Task Run_PostIsNoLongerWorthSaying_DropsItUnsaid()
    {
        await SayAsync("derby/1/starts", "it starts", manner: TenMinutes);
        Advance(TimeSpan.FromMinutes(10.1));
        await using var pump = Run();

        await SettledAsync("derby/1/starts", post => post is null);
        Assert.True(Sender.IsQuiet);
    }

    [Fact(Timeout = Limit)]
    public async Task Run_PostIsStillWorthSaying_SaysIt()
    {
        await SayAsync("derby/1/starts", "it starts", manner: TenMinutes);
        Advance(TimeSpan.FromMinutes(9.9));
        await using var pump = Run();

        Assert.Equal("show alpha trip-channel it starts", await NextAsync());
    }

    [Fact(Timeout = Limit)]
    public async Task Run_MessageThatStandsAndIsEditedLate_IsEdited()
    {
        await using (Run())
        {
            await SayAsync("derby/1/starts", "it starts", manner: TenMinutes);
            Assert.Equal("show alpha trip-channel it starts", await NextAsync());
            await SettledAsync("derby/1/starts", post => post is { NextAt: null });
        }

        await SayAsync("derby/1/starts", "it has started", manner: TenMinutes);
        Advance(TimeSpan.FromHours(1));
        await using var pump = Run();

        Assert.Equal("edit alpha m1 it has started", await NextAsync());
    }
}
