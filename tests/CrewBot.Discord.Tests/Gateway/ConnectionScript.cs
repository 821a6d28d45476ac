using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>One connection of one shard, without a network: a test writes what the other end says and sets the clock.</summary>
internal sealed class ConnectionScript : IDisposable
{
    private static readonly Uri Place = new("wss://gateway.invalid");

    private readonly CancellationTokenSource _stopping = new();

    public ConnectionScript() => Intake = new EventIntake(Handler, Logs.CreateLogger<EventIntake>());

    public WatchedClock Clock { get; } = new();
    public LogBook Logs { get; } = new();
    public RecordingHandler Handler { get; } = new();
    public GatewaySession Session { get; } = new();
    public EventIntake Intake { get; }

    public (GatewayConnection Connection, Task<ConnectionEnd> Run) Open(ScriptedTransport transport, double random = 0.5)
    {
        var connection = new GatewayConnection(
            transport,
            new ShardId(1, 4),
            new BotToken("secret"),
            Session,
            Intake,
            Clock,
            new FixedRandom(random),
            Logs.CreateLogger<GatewayConnection>());
        return (connection, connection.RunAsync(Place, _stopping.Token));
    }

    public Task StopAsync() => _stopping.CancelAsync();

    public void Dispose()
    {
        _stopping.Dispose();
        Intake.Dispose();
        Logs.Dispose();
    }
}
