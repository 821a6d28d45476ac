using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Commands;

/// <summary>How anglers say how willing the fish are.</summary>
internal static class MoodWords
{
    private static readonly string[] Negative =
    [
        "neg", "slow", "passive", "inactive", "tough", "finicky", "picky", "fussy", "sluggish", "lethargic", "shut down", "lockjaw",
        "won't bite", "won't eat", "won't commit", "bite died", "not biting", "not eating", "biting light", "light bite", "light biters", "just looking",
        "négatif", "negatif", "träge", "beißfaul", "trög",
    ];

    private static readonly string[] Positive =
        ["pos", "active", "aggressive", "hot", "on fire", "chasing", "biting", "feeding", "hungry", "positif", "actif", "aktiv"];

    /// <summary>Reads any of these words.</summary>
    public static ChoiceReader<Mood> Reader { get; } = new(
        [("negative", Mood.Negative), ("neutral", Mood.Neutral), ("positive", Mood.Positive)],
        [.. Negative.Select(word => (word, Mood.Negative)), .. Positive.Select(word => (word, Mood.Positive))]);
}
