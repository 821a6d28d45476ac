using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Rooms;

/// <summary>Lines from a pipe, a file, or a terminal that can't be edited on.</summary>
internal sealed class PlainLines(Surroundings surroundings) : ILineSource
{
    private readonly Lock _turn = new();
    private bool _asks;

    public string? Next()
    {
        Ask(surroundings is { InputIsTerminal: true, OutputIsTerminal: true });
        var line = BoundedText.ReadLine(surroundings.Input);
        Ask(false);
        return line;
    }

    public void WriteAbove(Action write)
    {
        lock (_turn)
        {
            if (_asks)
            {
                surroundings.Output.WriteLine();
            }

            write();
            Ask(_asks);
        }
    }

    private void Ask(bool asks)
    {
        lock (_turn)
        {
            _asks = asks;
            if (asks)
            {
                surroundings.Output.Write(ILineSource.Prompt);
            }

            surroundings.Output.Flush();
        }
    }
}
