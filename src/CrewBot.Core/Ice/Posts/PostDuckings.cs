namespace CrewBot.Core.Ice.Posts;

/// <summary>Finds that somebody or something was in the water, whatever it is called: in the drink, swimming, soaked, on the bottom.</summary>
internal static class PostDuckings
{
    private const PostWord Bodies = PostWord.Person | PostWord.Vehicle | PostWord.Pronoun | PostWord.First;

    private static readonly string[] Waters = ["lake", "drink", "river", "pond", "hole", "slough", "bay", "channel", "creek"];
    private static readonly string[] Limbs = ["leg", "foot", "feet", "boot", "arm", "knee", "waist", "neck", "chest", "hip", "thigh", "armpit", "chin", "shoulder", "ankle"];
    private static readonly string[] Modals = ["could", "might", "may", "can", "would", "will", "should", "to", "gonna", "you'll", "don't", "dont", "not", "never", "didn't", "didnt", "almost"];

    public static bool Is(PostSentence sentence, PostClause clause, int at)
    {
        var token = sentence[at];
        return token.Text switch
        {
            "swim" or "swam" or "swimming" or "bath" or "dip" or "dunk" or "plunge" => IsSwim(sentence, clause, at),
            "wet" or "soak" or "drench" => IsSoaked(sentence, clause, at),
            "sank" or "sunk" or "bottom" or "underwater" => IsSunk(sentence, clause, at),
            "in" => (sentence.Says(at, "in", "the", "drink") && !IsModal(sentence, at) && !sentence.Any(clause.Start, clause.End, PostWord.No)) || (IsBodyBefore(sentence, clause, at) && IsWaterAt(sentence, at + 1)) || IsUpTo(sentence, at + 1),
            "out" => IsRescue(sentence, clause, at),
            _ => false,
        };
    }

    /// <summary>Whether a word names somebody, a limb of theirs or what carries them.</summary>
    public static bool IsBody(PostToken token) => token.Is(Bodies) || token.Text is "dog" or "me" or "us" or "him" or "her" or "them" || IsLimb(token);

    /// <summary>Whether a body of water follows: the lake, the drink.</summary>
    public static bool IsWaterAt(PostSentence sentence, int at) =>
        sentence[at].Is(PostWord.Det) && (sentence[at + 1].Is(PostWord.Water) || Waters.Contains(sentence[at + 1].Text));

    /// <summary>Whether something is told that only may happen, or does not.</summary>
    public static bool IsModal(PostSentence sentence, int at) =>
        Modals.Contains(sentence[at - 1].Text) || (Modals.Contains(sentence[at - 2].Text) && sentence[at - 2].Text is not ("to" or "almost"));

    // Had to swim, took a swim, went for a swim; a swimming beach and a swim jig are something else.
    private static bool IsSwim(PostSentence sentence, PostClause clause, int at) =>
        !sentence[at + 1].Is(PostWord.Place) && sentence[at + 1].Text is not ("jig" or "bait")
        && (sentence.Any(at - 3, at, PostWord.Fall | PostWord.Have | PostWord.Vehicle) || sentence.SaysAnywhere(at - 3, at, "took")
            || (sentence[at].Text is "swam" && (at == clause.Start || IsBody(sentence[at - 1]))));

    // Got wet, soaked to the hip; not a line that is wetted, nor the rain.
    private static bool IsSoaked(PostSentence sentence, PostClause clause, int at)
    {
        if (IsModal(sentence, at) || sentence.SaysAnywhere(at, clause.End, "rain") || sentence.SaysAnywhere(at, clause.End, "snow") || sentence.Any(clause.Start, clause.End, PostWord.Crack))
        {
            return false;
        }

        return IsUpTo(sentence, at + 1)
            || (sentence[at - 1].Text is "got" or "getting" or "came" or "went" or "all" && (at - 1 == clause.Start || sentence.Find(clause.Start, at - 1, Bodies) >= 0));
    }

    // Up to my neck, to the hip, 2 my knees.
    private static bool IsUpTo(PostSentence sentence, int at)
    {
        var to = sentence[at].Text is "up" ? at + 1 : at;
        return (sentence[to].Text is "to" or "over" or "past" || sentence[to].Number is 2)
            && (IsLimb(sentence[to + 1]) || (sentence[to + 1].Is(PostWord.Det) && IsLimb(sentence[to + 2])));
    }

    private static bool IsSunk(PostSentence sentence, PostClause clause, int at) =>
        sentence.Any(clause.Start, at, PostWord.Vehicle) && (sentence[at].Text is not "bottom" || sentence[at - 1].Is(PostWord.Det)) && !IsModal(sentence, at);

    // Pulled him out, hauled a sled out of the water.
    private static bool IsRescue(PostSentence sentence, PostClause clause, int at)
    {
        var verb = at - 1;
        while (verb >= clause.Start && verb >= at - 4 && !(sentence[verb].Text is "pull" or "haul" or "hauled" or "drag" or "dragged" or "fish" or "fished" or "rescue" or "rescued"))
        {
            verb--;
        }

        var isOfWater = sentence[at + 1].Text is "of" && IsWaterAt(sentence, at + 2);
        return verb >= Math.Max(clause.Start, at - 4)
            && (sentence.Any(verb + 1, at, PostWord.Vehicle) ? isOfWater
                : (sentence.Any(verb + 1, at, PostWord.Person) || sentence[at - 1].Text is "him" or "her" or "me" or "us" or "dog") && (isOfWater || !sentence[at + 1].IsWord));
    }

    private static bool IsBodyBefore(PostSentence sentence, PostClause clause, int at)
    {
        for (var before = clause.Start; before < at; before++)
        {
            if (IsBody(sentence[before]))
            {
                return !sentence.Any(clause.Start, at, PostWord.Measure | PostWord.Catch | PostWord.No | PostWord.Be | PostWord.Have) || sentence.Any(clause.Start, at, PostWord.Vehicle);
            }
        }

        return false;
    }

    private static bool IsLimb(PostToken token) => Limbs.Contains(token.Text) || (token.Text is ['k' or 'h' or 't' or 'a' or 'n' or 'w', .., 's'] && Limbs.Contains(token.Text[..^1]));
}
