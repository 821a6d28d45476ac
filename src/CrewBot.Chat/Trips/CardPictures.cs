using CrewBot.Chat.Commands;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Pictures;

namespace CrewBot.Chat.Trips;

/// <summary>Puts a pocket card into a picture, which stays on the phone where there is no signal.</summary>
internal static class CardPictures
{
    private const int LongestHeading = 24;

    /// <summary>The card of a reply: what a line says before its colon stands above it.</summary>
    public static CardPicture Of(Reply card)
    {
        var caution = string.Join(" ", card.Cautions);
        return new(
            $"{card.Headline}. {string.Join(" ", card.Lines)} {caution}", card.Headline, [.. card.Lines.Select(Section)], caution);
    }

    private static CardSection Section(string line) =>
        line.IndexOf(": ", StringComparison.Ordinal) is var colon and > 0 and <= LongestHeading
            ? new(line[..colon], [RigWords.Sentence(line[(colon + 2)..])]) { IsBad = line[..colon] is PocketCard.BadIce or PocketCard.Missing }
            : new("", [line]);
}
