using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;
using Microsoft.Extensions.DependencyInjection;

[assembly: AssemblyFixture(typeof(CrewBot.Drawing.Tests.PictureFixture))]

namespace CrewBot.Drawing.Tests;

/// <summary>Asks the real commands for the pictures that go with their replies.</summary>
public sealed class PictureFixture : IDisposable
{
    private readonly ServiceProvider _services = new ServiceCollection()
        .AddLogging()
        .AddChat(TradeKnowledge.BuiltIn)
        .BuildServiceProvider();

    /// <summary>The first picture of the answer to a typed line; null when there is none.</summary>
    public async Task<PictureData?> AskAsync(string line, CrewUnits units = CrewUnits.Customary)
    {
        var typed = CommandText.Read(line, _services.GetRequiredService<CommandCatalog>()).Value!;
        var call = new CommandCall(
            "request-1", DateTimeOffset.UnixEpoch, new Caller("tamarack-bay", "pat", Role.Owner, units), typed.Path, typed.Options);
        var reply = await _services.GetRequiredService<Dispatcher>().AnswerAsync(call, TestContext.Current.CancellationToken);
        Assert.Equal(reply.Pictures.Count > 0, reply.Actions.Any(action => action.Kind == ActionKind.Picture));
        return reply.Pictures is [var picture, ..] ? picture.Compose!() : null;
    }

    public void Dispose() => _services.Dispose();
}
