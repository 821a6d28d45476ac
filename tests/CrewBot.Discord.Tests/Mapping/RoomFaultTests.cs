using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>What the platform refuses or loses, and what is logged of it.</summary>
public sealed class RoomFaultTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Command_TokenIsTooLate_IsLoggedAndNothingElse()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Server.Faults.Next("/callback", CannedReply.Refusal(404, 10062, "Unknown interaction"));
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        await stage.Logs.LineAsync("could not answer", Limit);

        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        Assert.DoesNotContain(stage.Logs.Lines, line => line.StartsWith("Error", StringComparison.Ordinal));
    }

    [Fact(Timeout = 30_000)]
    public async Task Form_TokenIsTooLate_IsLoggedAndNothingElse()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Server.Faults.Next("/callback", CannedReply.Refusal(404, 10062, "Unknown interaction"));
        await stage.AskAsync(stage.Make.Command("rig", Subcommand("plan")), Limit);
        await stage.Logs.LineAsync("Could not answer", Limit);

        Assert.DoesNotContain(stage.Logs.Lines, line => line.StartsWith("Error", StringComparison.Ordinal));
    }

    [Fact(Timeout = 30_000)]
    public async Task Callbacks_FailOneInThree_NoAnswerIsLost()
    {
        var calls = 0;
        await using var stage = await RoomStage.OpenAsync(Limit, prepare: server => server.Faults.Otherwise = (_, path) =>
            path.EndsWith("/callback", StringComparison.Ordinal) && Interlocked.Increment(ref calls) % 3 == 0
                ? (calls / 3 % 3) switch
                {
                    0 => CannedReply.Limited(0.1),
                    1 => new CannedReply(500),
                    _ => new CannedReply(503),
                }
                : null);
        var ids = new List<string>();
        for (var number = 0; number < 60; number++)
        {
            var command = stage.Make.Command("test", Subcommand("try"));
            ids.Add(command["id"]!.GetValue<string>());
            await stage.SendAsync(command);
        }

        foreach (var _ in ids)
        {
            await stage.Server.NextAnsweredAsync(Limit);
        }

        Assert.Empty(ids.Except(stage.Server.AnsweredInteractions));
    }

    [Fact(Timeout = 30_000)]
    public async Task Everything_WithMarkerTokens_ShowsNoneInTheLog()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Server.Faults.Next("/callback", CannedReply.Refusal(400, 50035, "Invalid Form Body"));
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        stage.Server.LatestSocket!.Cut();
        await stage.Server.NextActiveAsync(Limit);
        await stage.StopAsync();
        await stage.Run;

        Assert.NotEmpty(stage.Logs.Lines);
        Assert.DoesNotContain(stage.Logs.Lines, line =>
            line.Contains("marker-token", StringComparison.Ordinal));
    }
}
