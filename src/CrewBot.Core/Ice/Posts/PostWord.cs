namespace CrewBot.Core.Ice.Posts;

/// <summary>What a word can be in a post about ice; the words stand in <c>words.txt</c>.</summary>
[Flags]
internal enum PostWord : ulong
{
    None = 0,

    // Ice, and what people call it.
    Ice = 1UL << 0, Clear = 1UL << 1, White = 1UL << 2, Grey = 1UL << 3, Candled = 1UL << 4, Slush = 1UL << 5, Refrozen = 1UL << 6,
    Layered = 1UL << 7, Praise = 1UL << 8, Thick = 1UL << 9,

    // Measures, and what else is told in them.
    Unit = 1UL << 10, OtherUnit = 1UL << 11, Measure = 1UL << 12, Have = 1UL << 13, Be = 1UL << 14, Thing = 1UL << 15, Catch = 1UL << 16,
    Water = 1UL << 17, Extent = 1UL << 18, Change = 1UL << 19, Hedge = 1UL << 20, Limit = 1UL << 21,

    // Who says it, and how: as it is, as heard, asked, wished, foretold, remembered, sold, joked.
    Person = 1UL << 22, First = 1UL << 23, Say = 1UL << 24, Hear = 1UL << 25, Ask = 1UL << 26, Wish = 1UL << 27, Future = 1UL << 28,
    If = 1UL << 29, Season = 1UL << 30, Day = 1UL << 31, Part = 1UL << 32, Ad = 1UL << 33, Joke = 1UL << 34, Home = 1UL << 35,

    // Where.
    Place = 1UL << 36, PlaceAdj = 1UL << 37, Strong = 1UL << 38, Weak = 1UL << 39, NotPlace = 1UL << 40,

    // What joins and turns a sentence.
    Join = 1UL << 63, Det = 1UL << 41, No = 1UL << 42, Contrast = 1UL << 43, Pronoun = 1UL << 44, Adverb = 1UL << 45,

    // Hazards.
    Avoid = 1UL << 46, Watch = 1UL << 47, Thin = 1UL << 48, Poor = 1UL << 49, Safe = 1UL << 50, Open = 1UL << 51, Frozen = 1UL << 52,
    Fall = 1UL << 53, Through = 1UL << 54, Crack = 1UL << 55, Wet = 1UL << 56, Ridge = 1UL << 57, Current = 1UL << 58, Moving = 1UL << 59,
    Overflow = 1UL << 60, Vehicle = 1UL << 61, Use = 1UL << 62,

    Kind = Clear | White | Grey | Candled | Slush | Refrozen | Layered,
    WeakKind = Grey | Candled | Slush | Refrozen | Layered,
    Preposition = Strong | Weak,
    Unreal = Wish | Future | If,
}
