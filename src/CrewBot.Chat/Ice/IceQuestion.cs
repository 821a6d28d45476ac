using System.Text.RegularExpressions;

namespace CrewBot.Chat.Ice;

/// <summary>Hears in plain words whether the ice is safe, how thick it is, or whether it may be walked or driven on.</summary>
internal static partial class IceQuestion
{
    private const string Answer =
        "CrewBot never says that ice is safe. /ice board water:\"Loon Basin\" shows what was measured there, and when; "
        + "measure for yourself all the way, and your local authority has the last word.";

    /// <summary>The one answer there is to such a question; null for any other line.</summary>
    /// <param name="line">In lower case.</param>
    public static string? AnswerTo(string line) =>
        line[0] != '/' && Asks().IsMatch(line) && AboutIce().IsMatch(line) && !AboutTackle().IsMatch(line) ? Answer : null;

    [GeneratedRegex(
        @"\?|^(?:hey |so |ok |and )*(?:is|are|am|can|could|may|should|would|will|do|does|dare|how|hows|what|whats|when|where|which|any|anyone|anybody|safe|thick|ice|ok|okay)\b",
        RegexOptions.CultureInvariant)]
    private static partial Regex Asks();

    [GeneratedRegex(
        """
        \bice\b.*\b(?:safe|unsafe|ok|okay|thick|thickness|enough|holds?|solid|trust|walkable|drivable)\b | \bice\ like\b
        | \b(?:safe|unsafe|thick|trust|enough|any|solid|hold|hows|how's)\ (?:\w+\ )?ice\b
        | \bhow\ (?:thick|safe|solid|good|bad|is|are|much|many(?:\ \w+){1,2})\ (?:is\ |are\ )?(?:the\ |that\ |our\ )?ice\b
        | \bhow\ thick\ (?:is|was)\b | \bthick\ enough\b | \b(?:will|does)\ (?:it|that)\ hold\b
        | \b(?:safe|ok|okay|alright|enough)\ (?:for\ \w+\ )?to\ (?:walk|drive|ride|cross|go|get|head|skate|camp|park)\b
        | \b(?:is|are)\ (?:it|we|(?:[\w']+\ )*(?:lake|bay|basin|pond|river|narrows|channel))\ (?:safe|frozen|thick|walkable|drivable)\b
        | \b(?:can|could|may|should|dare|do)\ (?:i|we|you|one|they|he|she|people|anyone|(?:a|my|the)\ \w+)\ (?:\w+\ )?(?:walk|drive|ride|cross|skate|park|(?:go|get|head|step)\ (?:out|on|onto))\b
        | \b(?:hold|take|put|park)\ (?:a|my|our|the)\ (?:\w+\ )?(?:truck|pickup|car|suv|sled|snowmobile|quad|atv|wheelhouse|trailer)\b
        """,
        RegexOptions.CultureInvariant | RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex AboutIce();

    // "how thick is 4 lb mono" asks for a line.
    [GeneratedRegex(@"\b(?:lines?|leaders?|braid|mono|nylon|fluoro\w*|jigs?|jigging|spoons?|lures?|hooks?|rods?|reels?|lead|bait|fow)\b|[0-9] ?(?:ft|feet|'|lb)", RegexOptions.CultureInvariant)]
    private static partial Regex AboutTackle();
}
