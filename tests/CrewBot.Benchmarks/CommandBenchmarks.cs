using BenchmarkDotNet.Attributes;
using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Benchmarks;

/// <summary>Commands from the parsed request to the reply.</summary>
[MemoryDiagnoser, MedianColumn]
public class CommandBenchmarks
{
    private readonly Dispatcher _dispatcher;
    private readonly CommandCall _plan;
    private readonly CommandCall _drop;

    public CommandBenchmarks()
    {
        var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn).BuildServiceProvider();
        _dispatcher = services.GetRequiredService<Dispatcher>();
        var catalog = services.GetRequiredService<CommandCatalog>();
        _plan = Call("/rig plan species:walleye depth:24ft mood:negative", catalog);
        _drop = Call("/rig drop weight:1/8oz material:tungsten depth:30ft line:\"braid 6lb\"", catalog);
    }

    [Benchmark]
    public Task<Reply> RigPlan() => _dispatcher.AnswerAsync(_plan, CancellationToken.None);

    [Benchmark]
    public Task<Reply> RigDrop() => _dispatcher.AnswerAsync(_drop, CancellationToken.None);

    private static CommandCall Call(string line, CommandCatalog catalog)
    {
        var typed = CommandText.Read(line, catalog).Value!;
        return new CommandCall(
            "request-1", DateTimeOffset.UnixEpoch, new Caller("tamarack-bay", "pat", Role.Owner, CrewUnits.Customary), typed.Path, typed.Options);
    }
}
