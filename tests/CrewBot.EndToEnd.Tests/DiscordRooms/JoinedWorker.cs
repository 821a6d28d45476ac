using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;

namespace CrewBot.EndToEnd.Tests.DiscordRooms;

/// <summary>The built program as a service, joined to the stand-in.</summary>
internal sealed class JoinedWorker : IAsyncDisposable
{
    // Crews of other tests have the same ids: each program keeps its own database.
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-joined-");
    private readonly Process _process;
    private readonly bool _ownsServer;
    private readonly Task<string> _output;
    private readonly Task<string> _error;

    private JoinedWorker(StandInServer server, string token, string[] arguments, string? database = null)
    {
        Server = server;
        _ownsServer = database is null;
        _process = EndToEnd.Tests.Worker.Start(new WorkerCall
        {
            Arguments = arguments,
            Environment = new Dictionary<string, string>
            {
                ["CREWBOT_DATABASE"] = database ?? Path.Combine(_folder.FullName, "crew.db"),
                ["CREWBOT_DISCORD__TOKEN"] = token,
                ["CREWBOT_DISCORD__APIBASEADDRESS"] = server.ApiAddress.ToString(),
            },
        });
        _process.StandardInput.Close(); // as a service has it
        _output = _process.StandardOutput.ReadToEndAsync();
        _error = _process.StandardError.ReadToEndAsync();
    }

    public StandInServer Server { get; }

    public InteractionMaker Make => Server.Interactions;

    public bool HasExited => _process.HasExited;

    public static async Task<JoinedWorker> StartAsync(string? token = null, params string[] arguments)
    {
        var server = await StandInServer.StartAsync();
        return new JoinedWorker(server, token ?? server.Settings.Token, arguments);
    }

    public static async Task<(JoinedWorker Worker, GatewaySocket Socket)> JoinAsync(CancellationToken cancellationToken)
    {
        var worker = await StartAsync();
        return (worker, await worker.Server.NextActiveAsync(cancellationToken));
    }

    /// <summary>Joins a server that outlives the program, on a database that does as well.</summary>
    public static async Task<(JoinedWorker Worker, GatewaySocket Socket)> JoinAsync(StandInServer server, string database, CancellationToken cancellationToken) =>
        (new JoinedWorker(server, server.Settings.Token, [], database), await server.NextActiveAsync(cancellationToken));

    /// <summary>Sends an interaction and waits for its answer.</summary>
    public async Task<JsonNode> AskAsync(GatewaySocket socket, JsonObject interaction, CancellationToken cancellationToken)
    {
        await StandInServer.DispatchAsync(socket, "INTERACTION_CREATE", interaction);
        return await Server.NextAnswerAsync(interaction, cancellationToken);
    }

    public void Terminate()
    {
        using var kill = Process.Start("kill", ["-TERM", _process.Id.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    public async Task<(int Code, string Output, string Error)> EndAsync(CancellationToken cancellationToken)
    {
        await _process.WaitForExitAsync(cancellationToken);
        return (_process.ExitCode, await _output, await _error);
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
        _folder.Delete(recursive: true);
        if (_ownsServer)
        {
            await Server.DisposeAsync();
        }
    }
}
