using System.Globalization;

namespace CrewBot.Core.Ice.Posts;

/// <summary>Takes a post apart into sentences of words, numbers and marks.</summary>
internal sealed class PostText
{
    private static readonly string[] ShortForms = ["in", "ins", "ft", "cm", "mm", "m", "approx", "abt", "avg", "yd", "yds", "hr", "hrs", "min", "deg", "st", "mt", "no", "pt"];

    private readonly string _text;
    private readonly List<PostSentence> _sentences = [];
    private readonly List<PostToken> _tokens = [];
    private int _at;
    private bool _inQuotes;

    private PostText(string text) => _text = text;

    public static IReadOnlyList<PostSentence> SentencesOf(string text)
    {
        var post = new PostText(text);
        while (post._at < text.Length)
        {
            post.Next();
        }

        post.End(asks: false);
        return post._sentences;
    }

    private char Here => Peek(0);

    private char Peek(int ahead) => _at + ahead >= 0 && _at + ahead < _text.Length ? Plain(_text[_at + ahead]) : '\0';

    private static char Plain(char sign) => sign switch
    {
        '″' or '“' or '”' or '‟' or '¨' => '"',
        '′' or '’' or '‘' or '`' or '´' => '\'',
        '–' or '—' or '‒' or '−' or '‑' => '-',
        '…' => '.',
        '\u00a0' or '\u2009' or '\u202f' => ' ',
        _ => sign,
    };

    private bool IsGlued => _at > 0 && !char.IsWhiteSpace(Peek(-1));

    private void Next()
    {
        var here = Here;
        if (here == '\n' || here is '!' or '?' || (here == '.' && !char.IsAsciiDigit(Peek(1))))
        {
            Stop(here);
        }
        else if (char.IsWhiteSpace(here) || char.IsControl(here))
        {
            _at++;
        }
        else if (char.IsAsciiDigit(here) || here == '.')
        {
            Number();
        }
        else if (PartOf(here) is { } part)
        {
            Add(new(here.ToString(), here.ToString(), PostWord.None, IsGlued) { Number = part, Most = part, IsPart = true }, 1);
        }
        else if (char.IsLetter(here))
        {
            Word();
        }
        else if (here is '"' or '\'')
        {
            Quote();
        }
        else if (here == '<' && _text.IndexOf('>', _at) is var close and > 0 && close - _at < 40)
        {
            _at = close + 1; // a mention or an emoji of the platform
        }
        else if (here is ',' or ';' or ':' or '(' or ')' or '-' or '/' or '~' or '&' or '@' or '+' or '$' or '#' or '%' or '°' or '=')
        {
            Add(Mark(here.ToString()), 1);
        }
        else
        {
            _at++;
        }
    }

    // A stop after "in." or between the letters of "a.m." ends nothing.
    private void Stop(char sign)
    {
        _at++;
        var next = _at;
        while (next < _text.Length && _text[next] is ' ')
        {
            next++;
        }

        var goesOn = next < _text.Length && (char.IsLower(_text[next]) || char.IsAsciiDigit(_text[next]) || _text[next] is ',' or ')');
        if (sign == '.' && goesOn && _tokens.Count > 0 && (ShortForms.Contains(_tokens[^1].Raw.ToLowerInvariant()) || (next == _at && char.IsLetter(_text[next]))))
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

    private void Number()
    {
        var (start, glued) = (_at, IsGlued);
        var whole = Digits();
        var (least, most) = (whole, whole);
        if (Here == '.' && char.IsAsciiDigit(Peek(1)))
        {
            _at++;
            (least, most) = (Parse(start, _at + Run()), 0);
            _at += Run();
            most = least;
        }
        else if (Here == ',' && char.IsAsciiDigit(Peek(1)))
        {
            var run = Run(1);
            if (run == 3)
            {
                _at += 4;
                least = most = (whole * 1000) + Parse(_at - 3, _at);
            }
            else if (run <= 2 && Peek(run + 1) != ',' && !(whole < 10 && run == 2))
            {
                most = whole + (Parse(_at + 1, _at + 1 + run) / Math.Pow(10, run)); // 12,5 cm: no less than 12
                _at += run + 1;
            }
        }

        if (Here == '/' && Part(whole) is { } part)
        {
            Put(start, glued, part, part, isPart: true);
            return;
        }

        if (char.ToLowerInvariant(Here) is 's' or 'n' or 'r' or 't' or 'x' && (char.IsLetter(Peek(1)) || char.IsAsciiDigit(Peek(1)))
            && char.ToLowerInvariant(Peek(1)) is 't' or 'd' or 'h' or >= '0' and <= '9' && !char.IsLetter(Peek(2)))
        {
            while (char.IsLetterOrDigit(Here))
            {
                _at++; // 10th, 4x4
            }

            var word = _text[start.._at];
            _tokens.Add(new(word, "th", PostWord.OtherUnit, glued));
            return;
        }

        Put(start, glued, least, most, isPart: false);
    }

    // 3/4 is three quarters; 4/5 is how people write a range.
    private double? Part(double above)
    {
        var start = _at;
        _at++;
        var below = char.IsAsciiDigit(Here) ? Digits() : 0;
        if (below is 2 or 3 or 4 or 8 or 16 && above < below && above > 0 && Here != '/')
        {
            return above / below;
        }

        _at = start;
        return null;
    }

    private void Put(int start, bool glued, double least, double most, bool isPart) =>
        _tokens.Add(new(_text[start.._at], _text[start.._at], PostWord.None, glued) { Number = least, Most = most, IsPart = isPart });

    private double Digits()
    {
        var start = _at;
        _at += Run();
        return start == _at ? 0 : Parse(start, _at);
    }

    private int Run(int from = 0)
    {
        var length = 0;
        while (char.IsAsciiDigit(Peek(from + length)))
        {
            length++;
        }

        return length;
    }

    private double Parse(int from, int to) => double.Parse(_text.AsSpan(from, to - from), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private void Word()
    {
        var (start, glued) = (_at, IsGlued);
        while (char.IsLetter(Here) || (char.IsLetterOrDigit(Here) && _at > start) || (Here == '\'' && char.IsLetter(Peek(1))) || IsInitial(start))
        {
            _at++;
        }

        var raw = _text[start.._at];
        if (raw.StartsWith("http", StringComparison.OrdinalIgnoreCase) && Here == ':')
        {
            while (_at < _text.Length && !char.IsWhiteSpace(_text[_at]))
            {
                _at++;
            }

            return;
        }

        var (stem, classes) = PostLexicon.Find(raw.ToLowerInvariant().Replace('’', '\'').Replace('‘', '\''));
        _tokens.Add(new(raw, stem, classes, glued));
    }

    private bool IsInitial(int start) => Here == '.' && char.IsLetter(Peek(1)) && _at == start + 1 && !char.IsLetter(Peek(2));

    // After a number these are inches and feet, unless they close what a quotation mark opened.
    private void Quote()
    {
        var isDouble = Here == '"' || Peek(1) == '\'';
        var length = Here == '\'' && isDouble ? 2 : 1;
        if (IsGlued && _tokens.Count > 0 && _tokens[^1].Number is not null && !_inQuotes)
        {
            Add(new(isDouble ? "\"" : "'", isDouble ? "inch" : "foot", PostWord.Unit, true), length);
            return;
        }

        _inQuotes = isDouble && !_inQuotes && !IsGlued;
        _at += length;
    }

    private PostToken Mark(string sign) => new(sign, sign, PostLexicon.Find(sign).Classes, IsGlued);

    private void Add(PostToken token, int length)
    {
        _tokens.Add(token);
        _at += length;
    }

    private static double? PartOf(char sign) => sign switch
    {
        '½' => 1 / 2d,
        '¼' => 1 / 4d,
        '¾' => 3 / 4d,
        '⅓' => 1 / 3d,
        '⅔' => 2 / 3d,
        '⅛' => 1 / 8d,
        '⅜' => 3 / 8d,
        '⅝' => 5 / 8d,
        '⅞' => 7 / 8d,
        _ => null,
    };
}
