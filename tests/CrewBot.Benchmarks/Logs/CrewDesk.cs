using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Benchmarks.Logs;

/// <summary>The commands over a file, asked by anglers of one crew.</summary>
internal sealed class CrewDesk : IAsyncDisposable
{
    private const int Crew = 77;

    private readonly CrewBook _book;
    private readonly Dispatcher _dispatcher;
    private readonly CommandCatalog _catalog;
    private int _asked;

    public CrewDesk(string file)
    {
        _book = CrewBook.At(file);
        var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, _book).BuildServiceProvider();
        _dispatcher = services.GetRequiredService<Dispatcher>();
        _catalog = services.GetRequiredService<CommandCatalog>();
    }

    /// <summary>A parsed call, a new request each time, a minute after the last.</summary>
    public CommandCall Call(string line, int angler = 3)
    {
        var typed = CommandText.Read(line, _catalog).Value!;
        var number = Interlocked.Increment(ref _asked);
        var caller = new Caller(MillionCatches.KeyOf(Crew), MillionCatches.AnglerOf(angler), Role.Member, CrewUnits.Customary)
        {
            Name = $"Angler {angler}",
        };
        return new CommandCall($"request-{number}", MillionCatches.Now.AddMinutes(2 * number), caller, typed.Path, typed.Options);
    }

    /// <summary>Answers a call; a refusal is a fault of the benchmark.</summary>
    public async Task<Reply> AnswerAsync(CommandCall call)
    {
        var reply = await _dispatcher.AnswerAsync(call, CancellationToken.None);
        return reply.Problem is null ? reply : throw new InvalidOperationException(reply.Problem);
    }

    public ValueTask DisposeAsync() => _book.DisposeAsync();
}
