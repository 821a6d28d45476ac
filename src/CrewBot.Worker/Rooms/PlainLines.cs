using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Rooms;

/// <summary>Lines from a pipe, a file, or a terminal that can't be edited on.</summary>
internal sealed class PlainLines(Surroundings surroundings) : ILineSource
{
    public string? Next()
    {
        if (surroundings is { InputIsTerminal: true, OutputIsTerminal: true })
        {
            surroundings.Output.Write(ILineSource.Prompt);
            surroundings.Output.Flush();
        }

        return BoundedText.ReadLine(surroundings.Input);
    }
}
