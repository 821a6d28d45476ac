namespace CrewBot.Discord.Rest;

/// <summary>When a request may be sent again although it may already have been carried out.</summary>
internal enum Repetition
{
    /// <summary>Carried out twice it would act twice: repeated only when it certainly did not run.</summary>
    OnlyIfNotRun,

    /// <summary>Carried out twice it acts once.</summary>
    Always,
}
