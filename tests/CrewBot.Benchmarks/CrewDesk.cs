using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Benchmarks;

/// <summary>The commands over a file, asked by the people of one crew.</summary>
/// <param name="file">The database.</param>
/// <param name="crew">Whose.</param>
/// <param name="now">When the first is asked; each later one two minutes after the one before.</param>
public sealed class CrewDesk(string file, string crew, DateTimeOffset now) : IAsyncDisposable
{
    private readonly CrewBook _book = CrewBook.At(file);
    private ServiceProvider? _services;
    private int _asked;

    private ServiceProvider Services => _services ??= new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, _book).BuildServiceProvider();

    /// <summary>A parsed call, a new request each time.</summary>
    public CommandCall Call(string line, string member, Role role = Role.Member)
    {
        var typed = CommandText.Read(line, Services.GetRequiredService<CommandCatalog>()).Value!;
        return Call(typed.Path, typed.Options, member, role);
    }

    /// <summary>A call as a platform delivers it, a new request each time.</summary>
    public CommandCall Call(string path, IReadOnlyDictionary<string, string> options, string member, Role role = Role.Member)
    {
        var number = Interlocked.Increment(ref _asked);
        var caller = new Caller(crew, member, role, CrewUnits.Customary) { Name = $"Angler {member}" };
        return new CommandCall($"request-{number}", now.AddMinutes(2 * number), caller, path, options);
    }

    /// <summary>Answers a call; a refusal is a fault of the benchmark.</summary>
    public async Task<Reply> AnswerAsync(CommandCall call)
    {
        var reply = await Services.GetRequiredService<Dispatcher>().AnswerAsync(call, CancellationToken.None);
        return reply.Problem is null ? reply : throw new InvalidOperationException(reply.Problem);
    }

    public async ValueTask DisposeAsync()
    {
        if (_services is not null)
        {
            await _services.DisposeAsync();
        }

        await _book.DisposeAsync();
    }
}
