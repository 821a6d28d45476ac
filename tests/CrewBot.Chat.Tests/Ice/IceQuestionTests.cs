using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>Whoever asks whether the ice is safe gets one answer, whatever was measured.</summary>
public sealed class IceQuestionTests(ChatFixture chat)
{
    private const string Answer =
        "CrewBot never says that ice is safe. /ice board water:\"Loon Basin\" shows what was measured there, and when; "
        + "measure for yourself all the way, and your local authority has the last word.";

    [Theory]
    [InlineData("is the ice safe")]
    [InlineData("Is the ice on Loon Basin safe today?")]
    [InlineData("how thick is the ice")]
    [InlineData("How thick is it on Loon Basin")]
    [InlineData("how many inches of ice at the narrows")]
    [InlineData("how's the ice")]
    [InlineData("what’s the ice like")]
    [InlineData("can I walk on loon basin")]
    [InlineData("can i drive on loon basin")]
    [InlineData("can we take the truck out")]
    [InlineData("should we go out on tamarack bay tonight")]
    [InlineData("safe to walk?")]
    [InlineData("is it safe to drive")]
    [InlineData("is it safe")]
    [InlineData("is loon basin frozen")]
    [InlineData("will the ice hold my truck")]
    [InlineData("will it hold a sled")]
    [InlineData("thick enough yet?")]
    [InlineData("any ice yet")]
    [InlineData("is 4 inches enough to walk")]
    [InlineData("is it safe to walk out for walleye")]
    public void Read_WhetherTheIceHolds_HasOneAnswer(string line) => Assert.Equal(Answer, CommandText.Read(line, chat.Catalog).Fault);

    [Theory]
    [InlineData("is 6lb braid strong enough for pike")]
    [InlineData("how thick is 4lb mono")]
    [InlineData("how much weight for walleye under the ice")]
    [InlineData("what should i use for walleye on new ice 20ft")]
    [InlineData("can i drag a spoon for lakers")]
    [InlineData("walleye on the ice 24ft")]
    [InlineData("is it safe to release perch from 30ft")]
    [InlineData("/rig plan ask:\"is the ice safe\"")]
    public void Read_WhatIsAboutARig_IsAPlan(string line) => Assert.Equal("rig plan", CommandText.Read(line, chat.Catalog).Value?.Path);

    // What is seen on the ice is a report, and no question is read into it.
    [Theory]
    [InlineData("ice Loon Basin north bay 5in clear not safe")]
    [InlineData("ice Loon Basin narrows open water unsafe")]
    public void Read_AReport_IsAReport(string line) => Assert.Equal("ice report", CommandText.Read(line, chat.Catalog).Value?.Path);

    [Fact]
    public void Beside_ARefusedReportThatAsks_StandsTheAnswer() =>
        Assert.Equal($"No. {Answer}", Signpost.Beside("No.", "ice safe?", chat.Catalog));
}
