using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>The terminal that this process was started in.</summary>
internal sealed class ConsoleTerminal : ITerminal
{
    private readonly Surroundings _surroundings;

    public ConsoleTerminal(Surroundings surroundings)
    {
        _surroundings = surroundings;

        // Ctrl-C clears the line; commands are answered too fast to need interrupting.
        Console.TreatControlCAsInput = true;
    }

    public int Width => _surroundings.Width();

    public bool KeyWaits => Console.KeyAvailable;

    public ConsoleKeyInfo ReadKey() => Console.ReadKey(intercept: true);

    public void Write(string text)
    {
        _surroundings.Output.Write(text);
        _surroundings.Output.Flush();
    }
}
