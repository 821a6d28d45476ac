namespace CrewBot.Worker.Rooms;

/// <summary>Where a room's lines come from: a person at a terminal, a pipe, a script of keys.</summary>
internal interface ILineSource
{
    /// <summary>What asks a person for a line.</summary>
    const string Prompt = "crewbot> ";

    /// <summary>Waits for the next line.</summary>
    /// <returns>The line without its ending; null when there are no more.</returns>
    string? Next();

    /// <summary>Writes something whole: above the line that is being typed, if there is one.</summary>
    void WriteAbove(Action write);
}
