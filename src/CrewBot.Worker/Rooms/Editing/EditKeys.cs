namespace CrewBot.Worker.Rooms.Editing;

/// <summary>Which key does what to the line: arrows and the customs of Unix shells.</summary>
internal static class EditKeys
{
    /// <summary>What a key does to the line; null when it does nothing to it.</summary>
    public static Func<EditLine, EditLine>? For(ConsoleKeyInfo key)
    {
        var control = key.Modifiers.HasFlag(ConsoleModifiers.Control);
        var alt = key.Modifiers.HasFlag(ConsoleModifiers.Alt);
        return (key.Key, control, alt) switch
        {
            (ConsoleKey.LeftArrow, false, false) or (ConsoleKey.B, true, false) => line => line.Left(),
            (ConsoleKey.RightArrow, false, false) or (ConsoleKey.F, true, false) => line => line.Right(),
            (ConsoleKey.LeftArrow, _, _) or (ConsoleKey.B, false, true) => line => line.WordLeft(),
            (ConsoleKey.RightArrow, _, _) or (ConsoleKey.F, false, true) => line => line.WordRight(),
            (ConsoleKey.Home, _, _) or (ConsoleKey.A, true, false) => line => line.Home(),
            (ConsoleKey.End, _, _) or (ConsoleKey.E, true, false) => line => line.End(),
            (ConsoleKey.Backspace, false, false) or (ConsoleKey.H, true, false) => line => line.DeleteBack(),
            (ConsoleKey.Delete, false, false) or (ConsoleKey.D, true, false) => line => line.DeleteForward(),
            (ConsoleKey.Backspace, _, _) or (ConsoleKey.W, true, false) => line => line.DeleteWordBack(),
            (ConsoleKey.Delete, _, _) or (ConsoleKey.D, false, true) => line => line.DeleteWordForward(),
            (ConsoleKey.U, true, false) => line => line.DeleteToStart(),
            (ConsoleKey.K, true, false) => line => line.DeleteToEnd(),
            (_, false, false) when !char.IsControl(key.KeyChar) => line => line.Insert(key.KeyChar.ToString()),
            _ => null,
        };
    }
}
