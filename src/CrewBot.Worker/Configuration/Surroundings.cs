using System.Collections;
using System.Globalization;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace CrewBot.Worker.Configuration;

/// <summary>Where the process stands: its streams, its environment, its user. Tests put their own in its place.</summary>
internal sealed record Surroundings
{
    private const int WidthOfPages = 80;
    private const int StandardOutput = 1;

    public required TextReader Input { get; init; }

    public required TextWriter Output { get; init; }

    public required TextWriter Error { get; init; }

    /// <summary>Someone types: standard input is a terminal.</summary>
    public required bool InputIsTerminal { get; init; }

    /// <summary>Someone reads: standard output is a terminal.</summary>
    public required bool OutputIsTerminal { get; init; }

    /// <summary>Gives the number of columns, as it is at this moment.</summary>
    public required Func<int> Width { get; init; }

    public required string UserName { get; init; }

    public required IReadOnlyDictionary<string, string> Environment { get; init; }

    public static Surroundings OfThisProcess()
    {
        var environment = System.Environment.GetEnvironmentVariables()
            .Cast<DictionaryEntry>()
            .ToDictionary(entry => (string)entry.Key, entry => (string?)entry.Value ?? "");
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Surroundings
        {
            Input = new StreamReader(Console.OpenStandardInput(), utf8),
            Output = new StreamWriter(OpenOutput(), utf8),
            Error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true },
            InputIsTerminal = !Console.IsInputRedirected,
            OutputIsTerminal = !Console.IsOutputRedirected,
            Width = Console.IsOutputRedirected ? () => PageWidth(environment) : TerminalWidth,
            UserName = System.Environment.UserName,
            Environment = environment,
        };
    }

    // The console's own stream swallows a broken pipe: a room at the head of a pipeline would then never learn that nobody reads.
    private static Stream OpenOutput()
    {
        if (Console.IsOutputRedirected && !OperatingSystem.IsWindows())
        {
            var output = new FileStream(new SafeFileHandle(StandardOutput, ownsHandle: false), FileAccess.Write, bufferSize: 0);
            if (!output.CanSeek)
            {
                return output;
            }
        }

        return Console.OpenStandardOutput();
    }

    private static int PageWidth(Dictionary<string, string> environment) =>
        int.TryParse(environment.GetValueOrDefault("COLUMNS"), CultureInfo.InvariantCulture, out var columns) && columns > 0
            ? columns
            : WidthOfPages;

    private static int TerminalWidth() => Console.WindowWidth > 0 ? Console.WindowWidth : WidthOfPages;
}
