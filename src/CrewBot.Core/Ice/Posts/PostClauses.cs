namespace CrewBot.Core.Ice.Posts;

/// <summary>Parts a sentence into clauses, with marks or without: many posts are dictated.</summary>
internal static class PostClauses
{
    // What stands further away belongs to something else; and no post takes longer than its length.
    private const int Longest = 40;

    private const PostWord Verbs =
        PostWord.Be | PostWord.Have | PostWord.Measure | PostWord.Hedge | PostWord.Unreal | PostWord.Fall | PostWord.Frozen | PostWord.Open | PostWord.No | PostWord.Change;

    public static List<PostClause> Of(PostSentence sentence, IReadOnlyList<PostQuantity> quantities)
    {
        var clauses = new List<PostClause>();
        var start = 0;
        var quantity = 0;
        for (var at = 0; at < sentence.Count; at++)
        {
            while (quantity < quantities.Count && quantities[quantity].End <= at)
            {
                quantity++;
            }

            if (quantity < quantities.Count && at > quantities[quantity].Start)
            {
                continue;
            }

            if (IsMark(sentence, at))
            {
                Close(at);
                start = at + 1;
            }
            else if (at > start && (at - start >= Longest || Opens(sentence, start, at, quantities, quantity)))
            {
                Close(at);
                start = at;
            }
        }

        Close(sentence.Count);
        return clauses;

        void Close(int end)
        {
            if (end > start)
            {
                clauses.Add(new(start, end));
            }
        }
    }

    private static bool IsMark(PostSentence sentence, int at) =>
        sentence[at].Text is "," or ";" or "(" or ")" or "="
        || (sentence[at].Text is ":" && !sentence.IsClockAt(at))
        || (sentence[at].Text is "-" && !sentence[at].IsGlued)
        || (sentence[at].Text is "/" && sentence[at - 1].IsWord);

    private static bool Opens(PostSentence sentence, int start, int at, IReadOnlyList<PostQuantity> quantities, int quantity)
    {
        var (token, before, next) = (sentence[at], sentence[at - 1], sentence[at + 1]);
        if (token.Is(PostWord.Contrast) || (token.Is(PostWord.If) && token.Text is not "once" and not "before"))
        {
            return true;
        }

        if (token.Text is "and" or "&" or "plus")
        {
            return IsSubject(sentence, at + 1) || next.Is(PostWord.Measure | PostWord.No) || (quantity < quantities.Count && quantities[quantity].Start == at + 1);
        }

        // What hangs on "heard", "hope", "if" or "when" is part of it.
        var hangs = before.Is(PostWord.Unreal | PostWord.Hear | PostWord.Say | PostWord.Ask | PostWord.Contrast | PostWord.Det) || before.Text is "and" or "&" or "that"
            || (before.Is(PostWord.Hedge | PostWord.Be | PostWord.Have) && before.IsWord) || (before.Is(PostWord.Preposition) && !before.Is(PostWord.Unit));
        // "The ice it is not good", "my cousin he went in": the pronoun takes its noun up again.
        hangs |= token.Text is "it" or "he" or "she" or "they" && before.Is(PostWord.Ice | PostWord.Person) && sentence[at - 2].Is(PostWord.Det);
        if (IsSubject(sentence, at) || IsOffered(sentence, start, at))
        {
            return !hangs;
        }

        return !hangs && (token.Is(PostWord.Ask) || (token.Is(PostWord.Avoid | PostWord.Watch) && before.Text is not "be")
            || (token.Text is "be" && next.Is(PostWord.Watch))
            || (token.Is(PostWord.Wish | PostWord.Future) && quantity > 0 && quantities[quantity - 1].Start >= start && token.Text is not "tomorrow" and not "soon" and not "take"));
    }

    // "If you're headed there the ice is 7 inches" is so whether you go or not.
    private static bool IsOffered(PostSentence sentence, int start, int at) =>
        sentence[start].Text is "if" && sentence[start + 1].Text is "you" or "you're" or "u" or "anyone" or "anybody"
        && sentence[at].Is(PostWord.Det) && sentence[at + 1].Is(PostWord.Ice);

    private static bool IsSubject(PostSentence sentence, int at) =>
        (sentence[at].Is(PostWord.Pronoun) && (sentence[at].Text is not ("it" or "you") || sentence[at + 1].Is(Verbs)))
        || (sentence[at].Text is "there" && sentence[at + 1].Is(PostWord.Be | PostWord.Have))
        || (sentence[at].Is(PostWord.Ice) && sentence[at + 1].Is(PostWord.Be) && !sentence[at - 1].Is(PostWord.Kind | PostWord.Praise | PostWord.Det));
}
