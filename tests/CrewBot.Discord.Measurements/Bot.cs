using System.Diagnostics;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Measurements;

/// <summary>A bot process joined to a stand-in of its own.</summary>
internal sealed class Bot : IAsyncDisposable
{
    private readonly Process _process;

    private Bot(StandInServer server, Process process)
    {
        Server = server;
        _process = process;
    }

    public StandInServer Server { get; }

    /// <summary>Runs since just before the process was started.</summary>
    public Stopwatch SinceStart { get; } = Stopwatch.StartNew();

    public GatewaySocket Socket { get; set; } = null!;

    public int ProcessId => _process.Id;

    public TimeSpan Processor
    {
        get
        {
            _process.Refresh();
            return _process.TotalProcessorTime;
        }
    }

    public double ResidentMegabytes
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64 / 1e6;
        }
    }

    /// <summary>Starts it.</summary>
    /// <param name="program">What is run.</param>
    /// <param name="database">The file that CrewBot works on; the others need none.</param>
    public static async Task<Bot> StartAsync(MeasuredProgram program, string? database = null)
    {
        var server = await StandInServer.StartAsync(new StandInSettings { TurnsNamelessAway = false });
        var start = new ProcessStartInfo(program.File, program.Arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardError = true,
        };
        start.Environment["CREWBOT_DISCORD__TOKEN"] = server.Settings.Token;
        start.Environment["CREWBOT_DISCORD__APIBASEADDRESS"] = server.ApiAddress.ToString();
        if (database is not null)
        {
            start.Environment["CREWBOT_DATABASE"] = database;
        }

        var bot = new Bot(server, new Process { StartInfo = start });
        bot._process.ErrorDataReceived += static (_, _) => { };
        bot._process.Start();
        bot._process.StandardInput.Close();
        bot._process.BeginErrorReadLine();
        return bot;
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        await Server.DisposeAsync();
    }
}
