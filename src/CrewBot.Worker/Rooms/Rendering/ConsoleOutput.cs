using System.Text;
using CrewBot.Worker.Configuration;
using Spectre.Console;

namespace CrewBot.Worker.Rooms.Rendering;

/// <summary>Standard output as the renderer sees it.</summary>
internal sealed class ConsoleOutput(Surroundings surroundings) : IAnsiConsoleOutput
{
    // Below this no word fits, and a character of two columns would find no place at all.
    private const int Narrowest = 20;
    private const int NoPages = 24;

    public TextWriter Writer => surroundings.Output;

    public bool IsTerminal => surroundings.OutputIsTerminal;

    public int Width => Math.Max(Narrowest, surroundings.Width());

    public int Height => NoPages;

    public void SetEncoding(Encoding encoding)
    {
        // The stream's encoding is settled when the process starts.
    }

    /// <summary>A console that styles what it writes only for a terminal that can show it.</summary>
    public static IAnsiConsole Open(Surroundings surroundings) => AnsiConsole.Create(new AnsiConsoleSettings
    {
        Out = new ConsoleOutput(surroundings),
        Ansi = Styles(surroundings),
        ColorSystem = IsSet(surroundings, "NO_COLOR") ? ColorSystemSupport.NoColors : ColorSystemSupport.Standard,
        Interactive = InteractionSupport.No,
    });

    private static AnsiSupport Styles(Surroundings surroundings)
    {
        if (!surroundings.OutputIsTerminal || surroundings.Environment.GetValueOrDefault("TERM") == "dumb")
        {
            return AnsiSupport.No;
        }

        // A Windows console has to be asked; any other terminal of today understands.
        return OperatingSystem.IsWindows() ? AnsiSupport.Detect : AnsiSupport.Yes;
    }

    private static bool IsSet(Surroundings surroundings, string variable) =>
        surroundings.Environment.GetValueOrDefault(variable) is { Length: > 0 };
}
