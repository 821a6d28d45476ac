using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Commands;

/// <summary>How anglers say how willing the fish are.</summary>
internal static class MoodWords
{
    private static readonly string[] Negative =
    [
        "neg", "slow", "passive", "inactive", "tough", "finicky", "picky", "fussy", "sluggish", "lethargic", "shut down", "lockjaw",
        "won't bite", "won't eat", "won't commit", "bite died", "biting light", "light bite", "light biters", "just looking",
        "négatif", "negatif", "träge", "beißfaul", "trög",
    ];

    private static readonly string[] Positive =
        ["pos", "active", "aggressive", "hot", "on fire", "chasing", "biting", "feeding", "hungry", "positif", "actif", "aktiv"];

    // "biting" by itself is the opposite of "stopped biting".
    private static readonly string[] Deny =
        ["not", "not really", "not very", "ain't", "aren't", "isn't", "nothing", "nobody", "stopped", "quit", "barely", "hardly", "no longer"];

    private static readonly string[] Eager = ["biting", "eating", "feeding", "chasing", "active", "aggressive", "hungry", "hot"];

    /// <summary>Reads any of these words.</summary>
    public static ChoiceReader<Mood> Reader { get; } = new(
        [("negative", Mood.Negative), ("neutral", Mood.Neutral), ("positive", Mood.Positive)],
        [
            .. Negative.Concat(Deny.SelectMany(deny => Eager.Select(eager => $"{deny} {eager}"))).Select(word => (word, Mood.Negative)),
            .. Positive.Select(word => (word, Mood.Positive)),
        ]);
}
