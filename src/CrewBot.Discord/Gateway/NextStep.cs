namespace CrewBot.Discord.Gateway;

/// <summary>What to do once a connection is over.</summary>
internal enum NextStep
{
    Resume,
    Identify,

    /// <summary>Nothing helps until a person changes something.</summary>
    GiveUp,

    /// <summary>We wanted to leave.</summary>
    Stop,
}
