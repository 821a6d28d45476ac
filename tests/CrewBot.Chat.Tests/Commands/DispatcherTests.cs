using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using Microsoft.Extensions.Logging;
using UnitsNet;

namespace CrewBot.Chat.Tests.Commands;

public sealed class DispatcherTests
{
    private static readonly CommandOption<Length> Depth = CommandOption.Required("depth", "How deep", QuantityReaders.Depth);
    private static readonly CommandInfo Open = new("test ask", "A command for tests", "/test ask depth:24ft", [Depth]) { NeedsNoCrew = true };

    private readonly RecordedLog<Dispatcher> _log = new();

    [Fact]
    public async Task Answer_SoundCall_ReachesTheHandlerWithItsOptionsRead()
    {
        var reply = await AnswerAsync(Open, request => new Reply { Headline = request.Show.Depth(request.Get(Depth)) });

        Assert.Null(reply.Problem);
        Assert.Equal("24 ft (7.3 m)", reply.Headline);
        Assert.Empty(_log.Entries);
    }

    [Fact]
    public async Task Answer_UnknownCommand_IsRefused()
    {
        var reply = await DispatcherOf(Open, _ => new Reply())
            .AnswerAsync(Call("test nothing"), TestContext.Current.CancellationToken);

        Assert.Equal("There is no command '/test nothing'.", reply.Problem);
    }

    [Theory]
    [InlineData(Role.Member, "/test ask is for a crew's steward.")]
    [InlineData(Role.Steward, null)]
    [InlineData(Role.Owner, null)]
    public async Task Answer_LeastRole_IsAskedFor(Role role, string? problem)
    {
        var reply = await AnswerAsync(Open with { Role = Role.Steward }, _ => new Reply(), ChatFixture.Angler() with { Role = role });

        Assert.Equal(problem, reply.Problem);
    }

    [Theory]
    [InlineData(null, "/test ask works inside a crew's own chat, not in a direct message.")]
    [InlineData("tamarack-bay", null)]
    public async Task Answer_CommandThatNeedsACrew_IsRefusedInADirectMessage(string? crew, string? problem)
    {
        var reply = await AnswerAsync(Open with { NeedsNoCrew = false }, _ => new Reply(), ChatFixture.Angler() with { Crew = crew });

        Assert.Equal(problem, reply.Problem);
    }

    [Fact]
    public async Task Answer_HandlerThrows_GivesALineAndALogEntryButNoStackTrace()
    {
        var reply = await AnswerAsync(Open, _ => throw new InvalidOperationException("a secret of the inside"));

        Assert.Equal("Something went wrong inside CrewBot; it is in the log as request request-7.", reply.Problem);
        var entry = Assert.Single(_log.Entries);
        Assert.Equal(LogLevel.Error, entry.Level);
        Assert.Equal("Request request-7: /test ask failed.", entry.Message);
        Assert.Equal("a secret of the inside", entry.Exception!.Message);
    }

    [Fact]
    public async Task Answer_Cancelled_LetsTheCancellationPass()
    {
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => DispatcherOf(Open, _ =>
        {
            stop.Token.ThrowIfCancellationRequested();
            return new Reply();
        }).AnswerAsync(Call(Open.Path), stop.Token));
        Assert.Empty(_log.Entries);
    }

    // Someone else's cancellation, a time-out within the handler, is a failure like any other.
    [Fact]
    public async Task Answer_HandlerCancelsItself_IsAFailure()
    {
        var reply = await AnswerAsync(Open, _ => throw new OperationCanceledException());

        Assert.NotNull(reply.Problem);
        Assert.Single(_log.Entries);
    }

    [Theory]
    [InlineData("depth", "", "depth is empty. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("depth", "24\u0007ft", "depth: there is a control character in that; type it again without.")]
    [InlineData("depth", "24 lb", "depth: '24 lb' is a weight, not a depth. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("deep", "24 ft", "depth is missing. Give feet, metres or fathoms, such as 24ft.")]
    public async Task Answer_OptionFromAForm_IsJudgedLikeATypedOne(string name, string text, string problem)
    {
        var reply = await DispatcherOf(Open, _ => new Reply()).AnswerAsync(
            Call(Open.Path) with { Options = new Dictionary<string, string> { [name] = text } }, TestContext.Current.CancellationToken);

        Assert.Equal(problem, reply.Problem);
    }

    [Fact]
    public async Task Answer_OptionThatTheCommandHasNot_IsNamed()
    {
        var reply = await DispatcherOf(Open, _ => new Reply()).AnswerAsync(
            Call(Open.Path) with { Options = new Dictionary<string, string> { ["depth"] = "24ft", ["deep"] = "1" } },
            TestContext.Current.CancellationToken);

        Assert.Equal("/test ask has no option 'deep'.", reply.Problem);
    }

    [Fact]
    public async Task Answer_OptionOfTenThousandCharacters_IsTooLong()
    {
        var reply = await DispatcherOf(Open, _ => new Reply()).AnswerAsync(
            Call(Open.Path) with { Options = new Dictionary<string, string> { ["depth"] = new string('9', 10_000) } },
            TestContext.Current.CancellationToken);

        Assert.Equal("depth: 10000 characters is too long.", reply.Problem);
    }

    private Task<Reply> AnswerAsync(CommandInfo info, Func<Request, Reply> answer, Caller? caller = null) =>
        DispatcherOf(info, answer).AnswerAsync(Call(info.Path, caller), TestContext.Current.CancellationToken);

    private Dispatcher DispatcherOf(CommandInfo info, Func<Request, Reply> answer) =>
        new(new CommandCatalog([new Handler(info, answer)], bare: info.Path), CrewBook.None, _log);

    private static CommandCall Call(string path, Caller? caller = null) => new(
        "request-7", DateTimeOffset.UnixEpoch, caller ?? ChatFixture.Angler(), path, new Dictionary<string, string> { ["depth"] = "24ft" });

    private sealed class Handler(CommandInfo info, Func<Request, Reply> answer) : ICommandHandler
    {
        public CommandInfo Info => info;

        public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(answer(request));
    }
}
