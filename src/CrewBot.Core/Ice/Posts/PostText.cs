namespace CrewBot.Core.Ice.Posts;

/// <summary>Takes a post apart into sentences of words, numbers and marks.</summary>
internal sealed class PostText
{
    private const int LongestMention = 40;

    private static readonly string[] ShortForms = ["in", "ins", "ft", "cm", "mm", "m", "approx", "abt", "avg", "yd", "yds", "hr", "hrs", "min", "deg", "st", "mt", "no", "pt"];

    private readonly PostCursor _cursor;
    private readonly List<PostSentence> _sentences = [];
    private readonly List<PostToken> _tokens = [];
    private bool _inQuotes;

    private PostText(string text) => _cursor = new(text);

    public static IReadOnlyList<PostSentence> SentencesOf(string text)
    {
        var post = new PostText(text);
        while (!post._cursor.IsAtEnd)
        {
            post.Next();
        }

        post.End(asks: false);
        return post._sentences;
    }

    private void Next()
    {
        var here = _cursor.Here;
        if (here is '\n' or '!' or '?' || (here == '.' && !char.IsAsciiDigit(_cursor.Peek(1))))
        {
            Stop(here);
        }
        else if (char.IsAsciiDigit(here) || here == '.')
        {
            _tokens.Add(PostDigits.Read(_cursor));
        }
        else if (PostDigits.PartOf(here) is { } part)
        {
            Add(new(here.ToString(), here.ToString(), PostWord.None, _cursor.IsGlued) { Number = part, Most = part, IsPart = true }, 1);
        }
        else if (char.IsLetter(here))
        {
            Word();
        }
        else if (here is '"' or '\'')
        {
            Quote();
        }
        else if (here == '<' && _cursor.Text.IndexOf('>', _cursor.At, Math.Min(LongestMention, _cursor.Text.Length - _cursor.At)) is var close and > 0)
        {
            _cursor.At = close + 1; // a mention or an emoji of the platform
        }
        else if (here is ',' or ';' or ':' or '(' or ')' or '-' or '/' or '~' or '&' or '@' or '+' or '$' or '#' or '%' or '°' or '=')
        {
            Add(Mark(here.ToString()), 1);
        }
        else
        {
            _cursor.At++;
        }
    }

    // A stop after "in." or between the letters of "a.m." ends nothing.
    private void Stop(char sign)
    {
        _cursor.At++;
        var ahead = 0;
        while (_cursor.Peek(ahead) is ' ')
        {
            ahead++;
        }

        var next = _cursor.Peek(ahead);
        if (sign == '.' && _tokens is [.., { Number: not null }, { Text: "in" } unit])
        {
            _tokens[^1] = unit with { Text = "inch" }; // nobody shortens the preposition
        }

        var goesOn = char.IsLower(next) || char.IsAsciiDigit(next) || next is ',' or ')';
        if (sign == '.' && goesOn && _tokens.Count > 0 && (ShortForms.Contains(_tokens[^1].Raw.ToLowerInvariant()) || (ahead == 0 && char.IsLetter(next))))
        {
            return;
        }

        End(sign == '?');
    }

    private void End(bool asks)
    {
        if (_tokens.Count > 0)
        {
            _sentences.Add(new PostSentence([.. _tokens], asks));
            _tokens.Clear();
        }
    }

    private void Word()
    {
        var (start, glued) = (_cursor.At, _cursor.IsGlued);
        while (char.IsLetter(_cursor.Here) || (char.IsLetterOrDigit(_cursor.Here) && _cursor.At > start) || (_cursor.Here == '\'' && char.IsLetter(_cursor.Peek(1))) || IsInitial(start))
        {
            _cursor.At++;
        }

        var raw = _cursor.Since(start);
        if (_cursor.Here == ':' && raw.StartsWith("http", StringComparison.OrdinalIgnoreCase))
        {
            while (!_cursor.IsAtEnd && !char.IsWhiteSpace(_cursor.Here))
            {
                _cursor.At++;
            }

            return;
        }

        var (stem, classes) = PostLexicon.Find(raw.ToLowerInvariant().Replace('’', '\'').Replace('‘', '\''));
        Put(new(raw, stem, classes, glued));
    }

    // Snow ice is a kind of ice, "by eye" a guess, a brother in law a brother: two or three words that are one.
    private void Put(PostToken word)
    {
        if (word.Text is "ice" && LastIs("snow"))
        {
            _tokens[^1] = new($"{_tokens[^1].Raw} {word.Raw}", "snowice", PostWord.White | PostWord.Ice, _tokens[^1].IsGlued);
            return;
        }

        if (word.Text is "eye" && LastIs("by"))
        {
            _tokens[^1] = new($"{_tokens[^1].Raw} {word.Raw}", "eyeball", PostWord.Hedge, _tokens[^1].IsGlued);
            return;
        }

        if (word.Text is "law" && LastIs("in"))
        {
            var before = _tokens.Count - 2;
            while (before >= 0 && _tokens[before].Text is "-")
            {
                before--;
            }

            if (before >= 0 && _tokens[before].Is(PostWord.Person))
            {
                _tokens.RemoveRange(before + 1, _tokens.Count - before - 1);
                return;
            }
        }

        _tokens.Add(word);
    }

    // Whether a word stands last, a hyphen behind it or none.
    private bool LastIs(string word)
    {
        if (_tokens is [.., { Text: "-", IsGlued: true }] && _tokens.Count > 1 && _tokens[^2].Text == word)
        {
            _tokens.RemoveAt(_tokens.Count - 1);
        }

        return _tokens.Count > 0 && _tokens[^1].Text == word;
    }

    private bool IsInitial(int start) => _cursor.Here == '.' && char.IsLetter(_cursor.Peek(1)) && _cursor.At == start + 1 && !char.IsLetter(_cursor.Peek(2));

    // After a number these are inches and feet, unless they close what a quotation mark opened.
    private void Quote()
    {
        var isDouble = _cursor.Here == '"' || _cursor.Peek(1) == '\'';
        var length = _cursor.Here == '\'' && isDouble ? 2 : 1;
        if (_cursor.IsGlued && _tokens.Count > 0 && _tokens[^1].Number is not null && !_inQuotes)
        {
            Add(new(isDouble ? "\"" : "'", isDouble ? "inch" : "foot", PostWord.Unit, true), length);
            return;
        }

        _inQuotes = isDouble && !_inQuotes && !_cursor.IsGlued;
        _cursor.At += length;
    }

    private PostToken Mark(string sign) => new(sign, sign, PostLexicon.Find(sign).Classes, _cursor.IsGlued);

    private void Add(PostToken token, int length)
    {
        _tokens.Add(token);
        _cursor.At += length;
    }
}
