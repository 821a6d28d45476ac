using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Commands;

/// <summary>Reads "tip-up" in plain words: it says that a line is set, and the fish says with what.</summary>
/// <param name="knowledge">The trade; there a tip-up is a set bait.</param>
/// <param name="species">The option that names the fish.</param>
/// <param name="presentation">The option that names the presentation.</param>
internal sealed class TipUp(TradeKnowledge knowledge, CommandOption species, CommandOption presentation)
{
    private const string Said = "tip-up";

    /// <summary>Every word that finds a presentation.</summary>
    public Dictionary<string, string> Presentations { get; } = new(WordMatch.WordsOf(knowledge.Presentations)) { ["tip up"] = Said, ["tipup"] = Said };

    /// <summary>Takes a tip-up for a fish that no set bait suits as what does lie under one: a pike's is dead bait.</summary>
    public void Settle(List<KeyValuePair<string, string>> heard)
    {
        var at = heard.FindIndex(option => option.Key == presentation.Name && option.Value == Said);
        if (at >= 0
            && knowledge.Species.TryFind(heard.Find(option => option.Key == species.Name).Value ?? "", out var fish)
            && knowledge.Presentations.TryFind(Said, out var bait)
            && !Suits(fish, bait)
            && knowledge.Presentations.FirstOrDefault(known => known.SetLine && Suits(fish, known)) is { } lying)
        {
            heard[at] = new(presentation.Name, lying.Name);
        }
    }

    private static bool Suits(Species fish, Presentation presentation) =>
        Enum.GetValues<Mood>().Any(mood => fish.Presentations[mood].Contains(presentation.Key));
}
