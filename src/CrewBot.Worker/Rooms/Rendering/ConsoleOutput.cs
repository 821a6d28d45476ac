using System.Text;
using CrewBot.Worker.Configuration;
using Spectre.Console;

namespace CrewBot.Worker.Rooms.Rendering;

/// <summary>Standard output as the renderer sees it.</summary>
internal sealed class ConsoleOutput(Surroundings surroundings) : IAnsiConsoleOutput
{
    private const int NoPages = 24;

    public TextWriter Writer => surroundings.Output;

    public bool IsTerminal => surroundings.OutputIsTerminal;

    public int Width => surroundings.Width();

    public int Height => NoPages;

    public void SetEncoding(Encoding encoding)
    {
        // The stream's encoding is settled when the process starts.
    }

    /// <summary>A console that styles what it writes only for a terminal that can show it.</summary>
    public static IAnsiConsole Open(Surroundings surroundings) => AnsiConsole.Create(new AnsiConsoleSettings
    {
        Out = new ConsoleOutput(surroundings),
        Ansi = surroundings.OutputIsTerminal ? AnsiSupport.Detect : AnsiSupport.No,
        ColorSystem = surroundings.OutputIsTerminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
        Interactive = InteractionSupport.No,
        EnvironmentVariables = surroundings.Environment.ToDictionary(),
    });
}
