using System.Diagnostics;
using System.Text;

namespace CrewBot.EndToEnd.Tests;

public sealed class RoomTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Room_FedByAPipe_AnswersLineByLine()
    {
        var run = await Worker.RunAsync(new WorkerCall { Input = "# a script\nwalleye 24ft\nwhy\nshare\nhelp rig plan\nexit\n" });

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Matches(@"\AWalleye[\s\S]*\nWhy: Walleye[\s\S]*\nTo local, from [\s\S]*\n/rig plan: ", run.Output);
        Assert.DoesNotContain("crewbot>", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', run.Output);
    }

    [Fact]
    public async Task Room_OneLineRefused_Gives1()
    {
        var run = await Worker.RunAsync(new WorkerCall { Input = "walleye 24ft\n/rig plan species:kraken\n" });

        Assert.Equal(1, run.ExitCode);
        Assert.StartsWith("line 2: ", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Room_HomeThatCannotBeWritten_AnswersAllTheSame()
    {
        var environment = new Dictionary<string, string> { ["HOME"] = "/proc/none", ["XDG_STATE_HOME"] = "/proc/none" };

        var run = await Worker.RunAsync(new WorkerCall { Input = "walleye 24ft\n", Environment = environment });

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public async Task Room_ReaderGoesAway_EndsQuietly()
    {
        using var room = Worker.Start(new WorkerCall());
        using var stop = Deadline();
        await room.StandardInput.WriteLineAsync("walleye 24ft".AsMemory(), stop.Token);
        await room.StandardInput.FlushAsync(stop.Token);
        Assert.StartsWith("Walleye", await room.StandardOutput.ReadLineAsync(stop.Token), StringComparison.Ordinal);
        room.StandardOutput.Close();

        // The pipe from here stays open: only the broken one to the reader can end the room.
        await room.StandardInput.WriteLineAsync("perch 20ft".AsMemory(), stop.Token);
        await room.StandardInput.FlushAsync(stop.Token);

        await EndOfAsync(room, stop.Token);
        Assert.Equal((0, ""), (room.ExitCode, await room.StandardError.ReadToEndAsync(stop.Token)));
    }

    [Fact]
    public async Task Room_AskedToStopByASignal_EndsCleanly()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such signal.");
        using var room = Worker.Start(new WorkerCall());
        using var stop = Deadline();
        await room.StandardInput.WriteLineAsync("walleye 24ft".AsMemory(), stop.Token);
        await room.StandardInput.FlushAsync(stop.Token);
        Assert.StartsWith("Walleye", await room.StandardOutput.ReadLineAsync(stop.Token), StringComparison.Ordinal);

        using var signal = Process.Start("kill", ["-TERM", room.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);

        await EndOfAsync(room, stop.Token);
        Assert.Equal((0, ""), (room.ExitCode, await room.StandardError.ReadToEndAsync(stop.Token)));
    }

    [Fact]
    public async Task Room_OnATerminal_GreetsEditsCompletesAndAnswers()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/script") && OperatingSystem.IsLinux(), "Needs script from util-linux for a pseudo-terminal.");
        var start = new ProcessStartInfo("/usr/bin/script", ["-qec", $"{Worker.CommandLine}", "/dev/null"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            Environment = { ["TERM"] = "xterm", ["XDG_STATE_HOME"] = "/proc/none", ["NO_COLOR"] = "" },
        };
        using var terminal = Process.Start(start)!;
        using var stop = Deadline();
        var screen = new Screen(terminal.StandardOutput);

        await screen.UntilAsync("crewbot> ", stop.Token);
        await TypeAsync(terminal, "/rig pl\tspecies:wallx\u007f\t", stop.Token);
        await screen.UntilAsync("species:walleye", stop.Token);
        await TypeAsync(terminal, "depth:24ft\r", stop.Token);
        await screen.UntilAsync("Caution:", stop.Token);
        await screen.UntilAsync("crewbot> ", stop.Token);
        await TypeAsync(terminal, "nonsense\u0003\u0004", stop.Token);

        await EndOfAsync(terminal, stop.Token);
        Assert.Equal(0, terminal.ExitCode);
    }

    private static async Task TypeAsync(Process terminal, string keys, CancellationToken cancellationToken)
    {
        await terminal.StandardInput.WriteAsync(keys.AsMemory(), cancellationToken);
        await terminal.StandardInput.FlushAsync(cancellationToken);
    }

    private static CancellationTokenSource Deadline()
    {
        var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        stop.CancelAfter(Patience);
        return stop;
    }

    private static async Task EndOfAsync(Process process, CancellationToken cancellationToken)
    {
        try
        {
            await process.WaitForExitAsync(cancellationToken);
        }
        finally
        {
            if (!process.HasExited)
            {
                process.Kill(entireProcessTree: true);
            }
        }
    }

    /// <summary>What a terminal shows, read as it comes.</summary>
    private sealed class Screen(StreamReader output)
    {
        private readonly StringBuilder _unseen = new();
        private readonly char[] _chunk = new char[4096];

        public async Task UntilAsync(string text, CancellationToken cancellationToken)
        {
            while (!_unseen.ToString().Contains(text, StringComparison.Ordinal))
            {
                var count = await output.ReadAsync(_chunk, cancellationToken);
                Assert.True(count > 0, $"The terminal closed before it showed '{text}': {_unseen}");
                _unseen.Append(_chunk, 0, count);
            }

            var end = _unseen.ToString().IndexOf(text, StringComparison.Ordinal) + text.Length;
            _unseen.Remove(0, end);
        }
    }
}
