namespace CrewBot.Drawing.Inks;

/// <summary>What a colour is for; a theme says which it is.</summary>
internal enum Ink
{
    Paper,
    Text,

    /// <summary>Text of less weight; still legible.</summary>
    Quiet,

    /// <summary>Lines that help the eye and mean nothing.</summary>
    Rule,

    /// <summary>The thing shown.</summary>
    Tackle,

    /// <summary>What sets one thing off from the others. Never alone: a sign and a word say the same.</summary>
    Accent,

    /// <summary>What to beware of. Never alone.</summary>
    Warning,

    Water,
    Ice,
    Bottom,
}
