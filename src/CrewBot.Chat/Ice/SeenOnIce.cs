using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Hears in plain words that somebody is in danger, or saw a hazard, without the word that begins a report.</summary>
internal static class SeenOnIce
{
    private const string Danger = "If anybody is in danger, call your emergency number now: CrewBot calls nobody.";

    // "somebody just fell through"
    private const int MostBefore = 3;

    private static readonly HashSet<string> Calls = ["help!", "help!!", "help!!!", "sos", "mayday", "emergency"];

    private static readonly Dictionary<string, string> Hazards =
        IceWords.Hazards.Concat(IceWords.OtherHazards).ToDictionary(named => named.Word, named => IceWords.Of(named.Value));

    private static readonly string BrokeThrough = IceWords.Of(IceHazard.BrokeThrough);

    /// <summary>What to do instead of writing that; null for any other line.</summary>
    /// <param name="line">In lower case.</param>
    public static string? AnswerTo(string line)
    {
        if (Calls.Contains(line))
        {
            return Danger;
        }

        // "walleye 24ft, slush in the hole" asks for a rig.
        if (line[0] == '/' || line.Any(char.IsAsciiDigit))
        {
            return null;
        }

        var said = SaidWords.Of(line);
        for (var at = 0; at <= Math.Min(MostBefore, said.Length - 1); at++)
        {
            if (WordMatch.Longest(said, at, Hazards) is { } hazard && (hazard.Meaning == BrokeThrough || (at == 0 && IsAll(said, hazard.Words))))
            {
                return $"{(hazard.Meaning == BrokeThrough ? Danger + " " : "")}Nobody is told by this: report it with its water and place, such as ice Loon Basin narrows {hazard.Meaning}";
            }
        }

        return null;
    }

    private static bool IsAll(string[] said, int words) => said.Length == words || IceSpeech.IsOfPlace(said, words);
}
