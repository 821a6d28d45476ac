using BenchmarkDotNet.Attributes;
using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;
using CrewBot.Drawing;
using CrewBot.Drawing.Inks;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Benchmarks;

/// <summary>Drawing the picture of an answer, from its data to the PNG file.</summary>
[MemoryDiagnoser]
public class PictureBenchmarks
{
    private PictureData _rig = null!;
    private PictureData _pair = null!;

    /// <summary>Asks for the answers once.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _rig = Ask("/rig plan species:walleye depth:24ft mood:negative");
        _pair = Ask("/rig pair species:walleye depth:24ft");
    }

    /// <summary>A rig diagram; its aim is 25 ms.</summary>
    [Benchmark]
    public int Rig() => Illustrator.Draw(_rig, Theme.Light).Length;

    /// <summary>Two rigs side by side, the largest picture there is.</summary>
    [Benchmark]
    public int Pair() => Illustrator.Draw(_pair, Theme.Light).Length;

    /// <summary>The picture of the answer to a line.</summary>
    public static PictureData Ask(string line)
    {
        using var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn).BuildServiceProvider();
        var typed = CommandText.Read(line, services.GetRequiredService<CommandCatalog>()).Value!;
        var call = new CommandCall(
            "request-1", DateTimeOffset.UnixEpoch, new Caller("tamarack-bay", "pat", Role.Owner, CrewUnits.Customary), typed.Path, typed.Options);
        return services.GetRequiredService<Dispatcher>().AnswerAsync(call, CancellationToken.None).GetAwaiter().GetResult().Pictures[0].Compose!();
    }
}
