namespace CrewBot.Discord.Wire;

[Flags]
internal enum MessageFlags
{
    None = 0,

    /// <summary>Shown to the asker alone.</summary>
    Ephemeral = 1 << 6,

    /// <summary>Posted without a notification.</summary>
    Silent = 1 << 12,
}
