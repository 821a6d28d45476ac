using CrewBot.Discord.Mapping;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class NewestOnlyTests
{
    private static readonly Snowflake Ada = new(1);
    private static readonly Snowflake Bo = new(2);

    private readonly NewestOnly _newest = new();

    [Fact]
    public async Task RunAsync_ANewerOneOfTheSamePersonComes_DropsTheOlder()
    {
        var older = _newest.RunAsync(Ada, new Snowflake(10), UntilDropped, TestContext.Current.CancellationToken);
        var others = new TaskCompletionSource();
        var bystander = _newest.RunAsync(Bo, new Snowflake(11), dropped => others.Task.WaitAsync(dropped), TestContext.Current.CancellationToken);

        var answered = false;
        await _newest.RunAsync(Ada, new Snowflake(12), _ => Task.FromResult(answered = true), TestContext.Current.CancellationToken);
        others.SetResult();

        Assert.True(answered);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => older);
        await bystander;
    }

    [Fact]
    public async Task RunAsync_TheOlderComesLate_IsDroppedItself()
    {
        var finish = new TaskCompletionSource();
        var newer = _newest.RunAsync(Ada, new Snowflake(12), dropped => finish.Task.WaitAsync(dropped), TestContext.Current.CancellationToken);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            _newest.RunAsync(Ada, new Snowflake(10), _ => Task.CompletedTask, TestContext.Current.CancellationToken));
        finish.SetResult();
        await newer;
    }

    [Fact]
    public async Task RunAsync_TheNewerIsDone_AnyIsWorkedOnAgain()
    {
        await _newest.RunAsync(Ada, new Snowflake(12), _ => Task.CompletedTask, TestContext.Current.CancellationToken);
        var answered = false;
        await _newest.RunAsync(Ada, new Snowflake(11), _ => Task.FromResult(answered = true), TestContext.Current.CancellationToken);

        Assert.True(answered);
    }

    private static Task UntilDropped(CancellationToken dropped) => Task.Delay(Timeout.Infinite, dropped);
}
