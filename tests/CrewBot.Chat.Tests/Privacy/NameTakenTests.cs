using CrewBot.Chat.Commands;
using CrewBot.Chat.Privacy;

namespace CrewBot.Chat.Tests.Privacy;

public sealed class NameTakenTests
{
    [Theory]
    [InlineData("In: 2 people: Ana, Bo.", "In: 2 people: former angler, Bo.")]
    [InlineData("Ana's hub (2 of 4): Ana +1.", "former angler's hub (2 of 4): former angler +1.")]
    [InlineData("Anabel and Diana stay", "Anabel and Diana stay")]
    [InlineData("Ana-Lena stays", "Ana-Lena stays")]
    [InlineData("ana is another word", "ana is another word")]
    [InlineData("Ana Lind meets Ana at Ana Bay", "Ana Lind meets former angler at Ana Bay")]
    public void OutOf_Text_TakesTheNameAsAWordOfItsOwn(string said, string left) =>
        Assert.Equal(left, new NameTaken("Ana", ["Ana Lind", "Ana Bay", "Bo"]).OutOf(said));

    [Fact]
    public void OutOf_NameThatSomebodyElseHasToo_StaysTheirs() => Assert.Equal("In: Ana.", new NameTaken("Ana", ["Ana"]).OutOf("In: Ana."));

    [Fact]
    public void OutOf_NameWithoutALetter_LeavesMeasurementsAlone() => Assert.Equal("12 in, clear", new NameTaken("12", []).OutOf("12 in, clear"));

    [Fact]
    public void OutOf_NameWithSignsOfPatterns_IsTakenAsItIsWritten() =>
        Assert.Equal("In: former angler, B+", new NameTaken("A+ (old)", ["B+"]).OutOf("In: A+ (old), B+"));

    [Fact]
    public void OutOf_Reply_CoversEveryTextButCautions()
    {
        var named = new Dictionary<string, string> { ["who"] = "Ana" };
        var reply = new Reply
        {
            Headline = "OVERDUE: Ana",
            Lines = ["Ana is out."],
            Struck = ["Ana said so."],
            Reasons = ["Ana asked."],
            Cautions = ["Ana stands for a caution here."],
            Pictures = [new Picture { Kind = "seats", AlternativeText = "Ana in a hub" }],
            Actions = [new ReplyAction("Ana is back", ActionKind.Run, "trip back", named)],
            Choices = [new ReplyChoice("Where is Ana", [new ReplyAction("With Ana", ActionKind.Run, "trip back", named)])],
        };

        var text = ReplyJson.Write(new NameTaken("Ana", []).OutOf(reply));

        Assert.Equal(2, text.Split("Ana").Length);
        Assert.Contains("Ana stands for a caution here.", text, StringComparison.Ordinal);
        Assert.Equal("former angler", ReplyJson.Read(text).Actions[0].Options["who"]);
    }
}
