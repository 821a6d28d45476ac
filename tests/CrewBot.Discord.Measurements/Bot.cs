using System.Diagnostics;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Measurements;

/// <summary>A bot process joined to a stand-in of its own.</summary>
internal sealed class Bot : IAsyncDisposable
{
    public const string TokenVariable = "CREWBOT_DISCORD__TOKEN";
    public const string AddressVariable = "CREWBOT_DISCORD__APIBASEADDRESS";

    private readonly Process _process;

    private Bot(StandInServer server, Process process)
    {
        Server = server;
        _process = process;
    }

    public StandInServer Server { get; }

    public GatewaySocket Socket { get; set; } = null!;

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

    public static async Task<Bot> StartAsync(string name, params string[] arguments)
    {
        var server = await StandInServer.StartAsync();
        var program = Path.Combine(AppContext.BaseDirectory, name);
        var start = new ProcessStartInfo("dotnet", [program, .. arguments])
        {
            RedirectStandardInput = true, RedirectStandardError = true,
        };
        start.Environment[TokenVariable] = server.Settings.Token;
        start.Environment[AddressVariable] = server.ApiAddress.ToString();
        var process = Process.Start(start)!;
        process.StandardInput.Close();
        process.ErrorDataReceived += static (_, _) => { };
        process.BeginErrorReadLine();
        return new Bot(server, process);
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        await Server.DisposeAsync();
    }
}
