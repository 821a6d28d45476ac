namespace CrewBot.Worker.Configuration;

/// <summary>What the process tells whoever started it.</summary>
internal static class ExitCode
{
    public const int Answered = 0;

    public const int Refused = 1;

    /// <summary>The call, the configuration or a knowledge file can't be used.</summary>
    public const int Unusable = 2;

    /// <summary>Only a person can help, as when the platform refused the bot token: starting again would not.</summary>
    public const int NeedsAPerson = 3;

    /// <summary>CrewBot itself is at fault; the log says more, and starting again may help.</summary>
    public const int Failed = 4;
}
