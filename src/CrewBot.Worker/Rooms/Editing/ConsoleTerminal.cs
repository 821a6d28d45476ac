using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>The terminal that this process was started in.</summary>
internal sealed class ConsoleTerminal(Surroundings surroundings) : ITerminal
{
    public int Width => surroundings.Width();

    public bool KeyWaits => Console.KeyAvailable;

    public ConsoleKeyInfo ReadKey()
    {
        // Ctrl-C clears the line while one is written; while a command is answered it ends the process.
        Console.TreatControlCAsInput = true;
        try
        {
            return Console.ReadKey(intercept: true);
        }
        finally
        {
            Console.TreatControlCAsInput = false;
        }
    }

    public void Write(string text)
    {
        surroundings.Output.Write(text);
        surroundings.Output.Flush();
    }
}
