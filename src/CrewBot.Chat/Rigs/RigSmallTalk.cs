namespace CrewBot.Chat.Rigs;

/// <summary>Words that stand in a question about a rig and change nothing in it.</summary>
internal static class RigSmallTalk
{
    private static readonly HashSet<string> Words =
    [
        "a", "an", "and", "at", "in", "on", "the", "with", "for", "of", "to", "deep", "depth", "mood", "fish", "is", "are", "it",
        "rig", "please", "down", "about", "good", "best", "what", "whats", "what's", "need", "want", "me", "my", "i", "we",
        "bite", "how", "do", "should", "tie", "use", "using", "try", "go", "fishing", "but", "w/", "w", "@", "got", "have",
        "out", "here", "now", "today", "anyone", "know", "bait", "dusk", "dawn", "sunset", "sunrise", "morning", "evening",
        "night", "tonight", "after", "dark", "line", "lure", "hook", "reel", "spool", "spooled", "they", "they're", "theyre", "when", "really", "temp",
        "temperature",
    ];

    public static bool Holds(string word) => Words.Contains(word.ToLowerInvariant());
}
