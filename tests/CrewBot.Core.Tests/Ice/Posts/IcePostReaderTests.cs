using CrewBot.Core.Ice;
using CrewBot.Core.Ice.Posts;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice.Posts;

public class IcePostReaderTests
{
    private static readonly Gen<string> Scraps = Any(
        "5", "4-5", "12,5", "1/2", "½", "six", "a", "half", "inch", "inches", "in", "cm", "ft", "\"", "'", "of", "ice", "clear", "slush", "no", "not", "open", "water",
        "at", "the", "landing", "by", "narrows", "last", "year", "heard", "maybe", "if", "?", "!", ".", ",", ":", "-", "/", "(", "and", "but", "total", "to", "foot", "7", ":30",
        "ago", "min", "couple", "few", "between", "through", "went", "fell", "a.m.", "\n", "<@1>", "http://x", "😂", "\u0000", "Loon", "Basin", "10th", "4x4", "$", "~");

    [Fact]
    public void Read_AnyText_NeverThrows() => Gen.String.Sample(text => Read(text) is not null);

    [Fact]
    public void Read_ScrapsOfPosts_NeverThrows() => Gen.Select(Scraps.Array[0, 60], Gen.Bool)
        .Sample((scraps, isGlued) => Read(string.Join(isGlued ? "" : " ", scraps)) is not null, iter: 3000);

    [Fact]
    public void Read_HazardAdded_NothingThatWasFoundGoes() => Gen.Select(Any<string>([.. Posts()]), Any("Open water at the narrows.", "Someone broke through by the dam.", "Slush everywhere!"))
        .Sample((post, hazard) =>
        {
            var (before, after) = (Read(post), Read(post + "\n" + hazard));
            return before.Thicknesses.All(after.Thicknesses.Contains) && before.Hazards.All(after.Hazards.Contains)
                && before.UnitMissing.All(after.UnitMissing.Contains) && after.Hazards.Count > 0;
        });

    [Fact]
    public void Read_NumberWithoutUnit_IsNoThickness() => Gen.Select(
            Any("got", "measured", "there is", "", "maybe", "drilled and found"),
            Gen.Int[1, 40],
            Any("of ice", "of good clear ice", "clear", "thick", "", "white over 3 black"),
            Any("at the landing", "in north bay", "off the point", "", "in Tamarack Bay"))
        .Sample((verb, number, of, place) => Read($"{verb} {number} {of} {place}").Thicknesses.Count == 0);

    [Fact]
    public void Read_SeveralNumbersOfOneClause_IsNeverThickerThanTheSmallest() => Gen.Select(
            Gen.Int[1, 400],
            Gen.Int[1, 400],
            Any("-", " to ", " or ", "/", ", ", " maybe ", " and ", "–", " "),
            Any((" inches", 0.0254), ("in", 0.0254), ("\"", 0.0254), (" cm", 0.01), ("mm", 0.001)),
            Any(" of ice", " clear at the pier", " of good ice off the point", " by the dam"))
        .Sample((first, second, join, unit, rest) =>
            Read($"{first}{join}{second}{unit.Item1}{rest}").Thicknesses.All(thickness => thickness.Least.Meters <= (Math.Min(first, second) * unit.Item2) + 1e-9));

    [Fact]
    public void Read_FourThousandCharacters_FindsWhatIsSaid()
    {
        var post = string.Concat(Enumerable.Repeat("What a great day it was with all of the kids and the dog. ", 68)) + "5 inches of clear ice off the point.";

        Assert.InRange(post.Length, 3900, 4000);
        Assert.Equal(new PostedThickness(Length.FromMeters(5 * 0.0254), Length.FromMeters(5 * 0.0254), IceKind.Clear, "point", false, false), Assert.Single(Read(post).Thicknesses));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n ")]
    [InlineData("!?…")]
    public void Read_EmptyPost_SaysNothing(string post) => Assert.True(Read(post).IsEmpty);

    private static Gen<T> Any<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(at => values[at]);

    private static IcePost Read(string text) => IcePostReader.Read(text, PostTable.Posted, PostTable.Waters);

    private static IEnumerable<string> Posts() =>
        new[] { "posts.txt", "posts-blind-1.txt", "posts-blind-2.txt" }.SelectMany(PostTable.Read).Select(row => row.Post).Where(post => !Read(post).IsEmpty);
}
