namespace CrewBot.Discord.Mapping;

/// <summary>How an answer will be shown, as far as it is known before there is one.</summary>
/// <param name="UpdatesInPlace">The card that was pressed on turns into the answer.</param>
/// <param name="IsPrivate">A deferral is shown to the asker alone.</param>
internal sealed record AnswerPlan(bool UpdatesInPlace, bool IsPrivate)
{
    public static readonly AnswerPlan Private = new(UpdatesInPlace: false, IsPrivate: true);
    public static readonly AnswerPlan Posted = new(UpdatesInPlace: false, IsPrivate: false);
    public static readonly AnswerPlan InPlace = new(UpdatesInPlace: true, IsPrivate: true);
}
