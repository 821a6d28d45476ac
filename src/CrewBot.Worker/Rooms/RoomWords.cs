namespace CrewBot.Worker.Rooms;

/// <summary>The words of the room itself, with or without a slash.</summary>
internal static class RoomWords
{
    /// <summary>Every word that means something to the room, for completion.</summary>
    public static readonly IReadOnlyList<string> All = ["help", "why", "share", "pictures:on", "pictures:off", "exit", "quit", "leave"];

    /// <summary>What a line asks of the room.</summary>
    public static RoomWord Find(string line)
    {
        var words = line.TrimStart('/').ToLowerInvariant().Split([' ', '\t'], 2, StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            ["help" or "?", ..] => RoomWord.Help,
            ["why" or "why?"] => RoomWord.Why,
            ["share"] => RoomWord.Share,
            ["pictures:on"] or ["pictures", "on"] => RoomWord.PicturesOn,
            ["pictures:off"] or ["pictures", "off"] => RoomWord.PicturesOff,
            ["exit" or "quit" or "leave"] => RoomWord.Leave,
            _ => RoomWord.None,
        };
    }
}
