using CrewBot.Discord.Mapping;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>
/// What shows as it was written. Backslash escapes are confirmed by the platform's users, not by its documentation; the
/// guard against pings is the empty list of allowed mentions, tested elsewhere.
/// </summary>
public sealed class MarkdownTests
{
    [Theory]
    [InlineData("**bold** _slant_ ~~gone~~", @"\*\*bold\*\* \_slant\_ \~\~gone\~\~")]
    [InlineData("||hidden|| `code`", @"\|\|hidden\|\| \`code\`")]
    [InlineData("[free auger](https://bad.invalid)", @"\[free auger\](https://bad.invalid)")]
    [InlineData("# Title", @"\# Title")]
    [InlineData("  - item", @"  \- item")]
    [InlineData("> quote", @"\> quote")]
    [InlineData("1. first", @"1\. first")]
    [InlineData("x\n12. second", "x\n12\\. second")]
    [InlineData("7.3 m, 24-ft", "7\\.3 m, 24-ft")]
    [InlineData("depth 7.3 m", "depth 7.3 m")]
    [InlineData("<@1100000000000000003> <t:1:R>", "\\<@\u200B1100000000000000003> \\<t:1:R>")]
    [InlineData("@everyone", "@\u200Beveryone")]
    [InlineData("a\u202Eb\u2066c\u0007d\u2028e", "abcde")]
    [InlineData(@"C:\ice", @"C:\\ice")]
    [InlineData("walleye 🎣 ñ", "walleye 🎣 ñ")]
    public void Escape_Text_ShowsAsWritten(string text, string expected)
    {
        Assert.Equal(expected, Markdown.Escape(text));
    }
}
