using CrewBot.Core.Rigs;
using CrewBot.Core.Tests.Published;

namespace CrewBot.Core.Tests.Rigs;

public sealed class HookSizeTests
{
    [Theory]
    [PublishedRows("larger_hook_of_two")]
    public void Compare_PairInTable_FindsTheLarger(PublishedRow row)
    {
        var (a, b) = (HookSize.Parse(row.Inputs["a"]), HookSize.Parse(row.Inputs["b"]));

        Assert.Equal(row.Expected, (a > b ? a : b).ToString());
        Assert.Equal(a > b, b < a);
        Assert.Equal(a >= b, b <= a);
    }

    [Theory]
    [PublishedRows("ascending_order")]
    public void Compare_SetInTable_SortsFromSmallToLarge(PublishedRow row) =>
        Assert.Equal(
            row.Expected.Split('|'),
            row.Inputs["set"].Split('|').Select(HookSize.Parse).Order().Select(size => size.ToString()));

    // Rank: n/0 is n, a plain n is 1 − n; so size 1 stands next to 1/0.
    [Theory]
    [InlineData("32", -31)]
    [InlineData("2", -1)]
    [InlineData("1", 0)]
    [InlineData("1/0", 1)]
    [InlineData("20/0", 20)]
    [InlineData(" 6 ", -5)]
    public void Parse_Size_GivesItsRankAndWritesItBack(string text, int rank)
    {
        var size = HookSize.Parse(text);

        Assert.Equal(rank, size.Rank);
        Assert.Equal(text.Trim(), size.ToString());
        Assert.Equal(size, HookSize.Parse(size.ToString()));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("0/0")]
    [InlineData("33")]
    [InlineData("21/0")]
    [InlineData("-2")]
    [InlineData("+2")]
    [InlineData("2/1")]
    [InlineData("/0")]
    [InlineData("1 /0")]
    [InlineData("2.0")]
    [InlineData("99999999999")]
    [InlineData("six")]
    public void TryParse_AnythingElse_IsRefused(string? text)
    {
        Assert.False(HookSize.TryParse(text, out _));
        Assert.Throws<FormatException>(() => HookSize.Parse(text!));
    }

    [Fact]
    public void Default_IsSizeOne() => Assert.Equal("1", default(HookSize).ToString());
}
