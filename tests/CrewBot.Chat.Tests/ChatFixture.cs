using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;

[assembly: AssemblyFixture(typeof(CrewBot.Chat.Tests.ChatFixture))]

namespace CrewBot.Chat.Tests;

/// <summary>Every command with the built-in knowledge, spoken to the way a room does.</summary>
public sealed class ChatFixture : IDisposable
{
    private readonly ServiceProvider _services = new ServiceCollection()
        .AddLogging()
        .AddChat(TradeKnowledge.BuiltIn)
        .BuildServiceProvider(new ServiceProviderOptions { ValidateOnBuild = true });

    public CommandCatalog Catalog => _services.GetRequiredService<CommandCatalog>();

    private Dispatcher Dispatcher => _services.GetRequiredService<Dispatcher>();

    public static Caller Angler(CrewUnits units = CrewUnits.Customary) => new("tamarack-bay", "pat", Role.Owner, units);

    /// <summary>Answers one typed line.</summary>
    public async Task<Reply> SayAsync(string line, CrewUnits units = CrewUnits.Customary)
    {
        var typed = CommandText.Read(line, Catalog);
        return typed.Fault is { } fault ? Reply.Refuse(fault) : await AnswerAsync(CallOf(typed.Value!, units));
    }

    /// <summary>Answers options as a platform's form delivers them.</summary>
    public Task<Reply> CallAsync(string path, params (string Name, string Text)[] options) =>
        AnswerAsync(CallOf(new TypedCommand(path, options.ToDictionary(option => option.Name, option => option.Text)), CrewUnits.Customary));

    /// <summary>A typed line as a call, not yet answered.</summary>
    public CommandCall CallOf(string line) => CallOf(CommandText.Read(line, Catalog).Value!, CrewUnits.Customary);

    public Task<Reply> AnswerAsync(CommandCall call) => Dispatcher.AnswerAsync(call, TestContext.Current.CancellationToken);

    public void Dispose() => _services.Dispose();

    private static CommandCall CallOf(TypedCommand command, CrewUnits units) =>
        new("request-1", DateTimeOffset.UnixEpoch, Angler(units), command.Path, command.Options);
}
