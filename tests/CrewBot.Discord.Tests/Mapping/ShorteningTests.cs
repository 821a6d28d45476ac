using CrewBot.Discord.Mapping;
using CsCheck;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class ShorteningTests
{
    [Fact]
    public void Fit_AnyText_KeepsTheLimitAndSaysWhatItDid()
    {
        Gen.Select(Gen.String, Gen.Int[16, 60]).Sample((text, limit) =>
        {
            var escaped = Markdown.Escape(text);
            var fitted = Shortening.Fit(escaped, limit);

            return fitted.Length <= limit
                && (fitted == escaped) == (escaped.Length <= limit)
                && (fitted == escaped || fitted.EndsWith(Shortening.Mark, StringComparison.Ordinal));
        });
    }

    [Theory]
    [InlineData("👩‍🚒👩‍🚒👩‍🚒👩‍🚒👩‍🚒")]
    [InlineData("e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301")]
    [InlineData(@"\*\*\*\*\*\*\*\*\*\*\*\*\*\*\*\*\*")]
    [InlineData(@"\\\\\\\\\\\\\\\\\\\\\\\\\\\\")]
    public void Fit_WhateverTheLength_CutsNoCharacterAndNoEscapeInTwo(string text)
    {
        for (var limit = Shortening.Mark.Length; limit < text.Length; limit++)
        {
            var head = Shortening.Fit(text, limit)[..^Shortening.Mark.Length];
            Assert.DoesNotContain('\uFFFD', System.Text.Encoding.UTF8.GetString(System.Text.Encoding.UTF8.GetBytes(head)));
            Assert.True((head.Length - head.TrimEnd('\\').Length) % 2 == 0, head);
            Assert.False(text[head.Length..].StartsWith('\u0301'), head);
        }
    }

    [Fact]
    public void FitLines_TooMany_CountsTheMissing()
    {
        var text = Shortening.FitLines([.. Enumerable.Range(1, 100).Select(number => $"line {number}")], limit: 60);

        Assert.InRange(text.Length, 1, 60);
        Assert.StartsWith("line 1\nline 2\n", text, StringComparison.Ordinal);
        Assert.Matches(@"… \(cut: \d+ more lines\)$", text);
    }

    [Fact]
    public void FitLines_AnyLines_KeepTheLimit()
    {
        Gen.Select(Gen.String.Array[0, 20], Gen.Int[60, 400]).Sample(
            (lines, limit) => Shortening.FitLines(lines, limit).Length <= limit);
    }
}
