namespace CrewBot.Worker.Rooms.Editing;

/// <summary>What a line editor needs of a terminal.</summary>
internal interface ITerminal
{
    /// <summary>The number of columns, as it is at this moment.</summary>
    int Width { get; }

    /// <summary>Whether a key has been pressed that is not yet read: more of a paste, or the rest of one character.</summary>
    bool KeyWaits { get; }

    /// <summary>Waits for a key and does not show it.</summary>
    ConsoleKeyInfo ReadKey();

    /// <summary>Writes text and control sequences as they are.</summary>
    void Write(string text);
}
