using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>Words for things that can be ruled out though no record stands for them.</summary>
public static class Ban
{
    public const string Treble = "treble";
    public const string LiveBait = "live-bait";

    /// <summary>Whether a bait is ruled out, by itself or by its kind.</summary>
    public static bool Forbids(IReadOnlySet<string> without, Bait bait) =>
        without.Contains(bait.Key) || (bait.Kind == BaitKind.LiveFish && without.Contains(LiveBait));
}
