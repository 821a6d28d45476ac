namespace CrewBot.Core.Ice.Posts;

/// <summary>A word, a number or a mark of a post.</summary>
/// <param name="Raw">As written.</param>
/// <param name="Text">A word's stem in lower case; otherwise as written.</param>
/// <param name="Words">What the word can be.</param>
/// <param name="IsGlued">Whether it follows without a space: the unit in <c>5in</c>.</param>
internal readonly record struct PostToken(string Raw, string Text, PostWord Words, bool IsGlued)
{
    /// <summary>Stands where a sentence has no token.</summary>
    public static PostToken None { get; } = new("", "", PostWord.None, false);

    /// <summary>Its value, for a number in digits; null otherwise.</summary>
    public double? Number { get; init; }

    /// <summary>What a number may mean at most: 4,5 is no less than 4 and perhaps 4.5.</summary>
    public double Most { get; init; }

    /// <summary>Whether it is a part written as such: ½ or 1/2.</summary>
    public bool IsPart { get; init; }

    public bool IsWord => Text.Length > 0 && char.IsLetter(Text[0]);

    public bool IsMark => Text.Length > 0 && Number is null && !char.IsLetterOrDigit(Text[0]);

    public bool IsCapital => IsWord && char.IsUpper(Raw[0]) && Raw.Any(char.IsLower);

    public bool Is(PostWord classes) => (Words & classes) != 0;
}
