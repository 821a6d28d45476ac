namespace CrewBot.Core.Ice.Posts;

/// <summary>A sentence of a post. Places before and after it hold no token, so that looking around needs no bounds.</summary>
/// <param name="tokens">In the order written.</param>
/// <param name="asks">Whether it ends with a question mark.</param>
internal sealed class PostSentence(PostToken[] tokens, bool asks)
{
    private static readonly PostToken[] Outside = [PostToken.None];

    private readonly PostWord _words = tokens.Aggregate(PostWord.None, static (words, token) => words | token.Words);

    public int Count => tokens.Length;

    public bool Asks => asks;

    public ref readonly PostToken this[int at] => ref (uint)at < (uint)tokens.Length ? ref tokens[at] : ref Outside[0];

    /// <summary>Whether any word of it is of a class.</summary>
    public bool Has(PostWord classes) => (_words & classes) != 0;

    /// <summary>Whether a colon stands between an hour and its minutes.</summary>
    public bool IsClockAt(int at) => this[at].Text is ":" && this[at - 1].Number is not null && this[at + 1] is { IsGlued: true, Number: < 60, Raw.Length: 2 };

    /// <summary>Where the first word of a class stands from one place up to another; -1 where none does.</summary>
    public int Find(int from, int to, PostWord classes)
    {
        for (var at = Math.Max(0, from); at < Math.Min(to, tokens.Length); at++)
        {
            if (tokens[at].Is(classes))
            {
                return at;
            }
        }

        return -1;
    }

    public bool Any(int from, int to, PostWord classes) => Find(from, to, classes) >= 0;

    /// <summary>Whether words stand one after another from a place on.</summary>
    public bool Says(int at, params ReadOnlySpan<string> words)
    {
        for (var word = 0; word < words.Length; word++)
        {
            if (this[at + word].Text != words[word])
            {
                return false;
            }
        }

        return true;
    }

    public bool SaysAnywhere(int from, int to, params ReadOnlySpan<string> words)
    {
        for (var at = from; at <= to - words.Length; at++)
        {
            if (Says(at, words))
            {
                return true;
            }
        }

        return false;
    }
}
