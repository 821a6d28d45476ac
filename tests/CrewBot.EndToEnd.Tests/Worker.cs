using System.Diagnostics;
using System.Reflection;

namespace CrewBot.EndToEnd.Tests;

/// <summary>Runs the built program as a process of its own, as a user's shell would.</summary>
internal static class Worker
{
    private static readonly string Built = Path.GetFullPath(typeof(Worker).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>()
        .Single(metadata => metadata.Key == "Program").Value!);

    // A published program is named by the environment; it needs no runtime beside it.
    private static readonly string? Published = TakePublished();

    private static readonly DirectoryInfo State = Directory.CreateTempSubdirectory("crewbot-state-");

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Runs the program to its end.</summary>
    public static Task<WorkerRun> RunAsync(params string[] args) => RunAsync(new WorkerCall { Arguments = args });

    /// <summary>Runs the program to its end; a program that does not end is a failure.</summary>
    public static async Task<WorkerRun> RunAsync(WorkerCall call)
    {
        using var process = Start(call);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        stop.CancelAfter(Patience);
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(stop.Token);
            var error = process.StandardError.ReadToEndAsync(stop.Token);
            await process.StandardInput.WriteAsync(call.Input.AsMemory(), stop.Token);
            process.StandardInput.Close();
            await process.WaitForExitAsync(stop.Token);
            return new WorkerRun(process.ExitCode, await output, await error);
        }
        finally
        {
            if (!process.HasExited)
            {
                process.Kill(entireProcessTree: true);
            }
        }
    }

    /// <summary>The program as a shell is told of it.</summary>
    public static string CommandLine => Published ?? $"dotnet {Built}";

    /// <summary>Starts the program with all its streams in the caller's hands.</summary>
    public static Process Start(WorkerCall call)
    {
        var start = new ProcessStartInfo(Published ?? "dotnet", Published is null ? [Built, .. call.Arguments] : call.Arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // No test heeds the settings, or writes to the database, of whoever runs it.
        start.Environment["XDG_STATE_HOME"] = State.FullName;
        foreach (var setting in start.Environment.Keys.Where(name => name.StartsWith("CREWBOT_", StringComparison.OrdinalIgnoreCase)).ToList())
        {
            start.Environment.Remove(setting);
        }

        foreach (var (name, value) in call.Environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    // Taken away, too: to the program it would be a setting that it does not know.
    private static string? TakePublished()
    {
        const string variable = "CREWBOT_PUBLISHED";
        var published = Environment.GetEnvironmentVariable(variable);
        Environment.SetEnvironmentVariable(variable, null);
        return published;
    }
}
