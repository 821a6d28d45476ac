namespace CrewBot.Chat.Tests.Commands;

/// <summary>
/// Budgets on memory, which unlike time do not depend on who else uses the machine: docs/performance.md has the figures.
/// </summary>
public sealed class AllocationTests(ChatFixture chat)
{
    [Theory]
    [InlineData("/rig plan species:walleye depth:24ft mood:negative", 60_000)]
    [InlineData("/rig plan species:walleye depth:24ft mood:positive also-there:pike air:-12C current:0.05m/s size:large", 60_000)]
    [InlineData("/rig plan species:pike depth:10ft mood:positive size:trophy", 60_000)]
    [InlineData("/rig plan species:perch depth:60ft", 60_000)]
    [InlineData("/rig plan species:laker depth:100ft", 60_000)]
    [InlineData("/rig drop weight:1/8oz material:tungsten depth:30ft line:\"braid 6lb\"", 20_000)]
    public async Task Say_Command_StaysWithinItsMemory(string line, long budget)
    {
        var call = chat.CallOf(line);
        await chat.AnswerAsync(call); // once, for what is made once

        var before = GC.GetAllocatedBytesForCurrentThread();
        var answering = chat.AnswerAsync(call);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.True(answering.IsCompleted); // on this thread alone, so all of it was counted
        Assert.Null((await answering).Problem);
        TestContext.Current.TestOutputHelper?.WriteLine($"{allocated} bytes");
        Assert.InRange(allocated, 1, budget);
    }
}
