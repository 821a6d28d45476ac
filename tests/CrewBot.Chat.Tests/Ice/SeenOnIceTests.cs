using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>A hazard or a call for help that is written where rigs are asked for.</summary>
public sealed class SeenOnIceTests(ChatFixture chat)
{
    private const string Danger = "If anybody is in danger, call your emergency number now: CrewBot calls nobody.";
    private const string Report = "Nobody is told by this: report it with its water and place, such as ice Loon Basin narrows ";

    [Theory]
    [InlineData("help!", Danger)]
    [InlineData("SOS", Danger)]
    [InlineData("fell through", $"{Danger} {Report}broke through")]
    [InlineData("Somebody just went through by the narrows!", $"{Danger} {Report}broke through")]
    [InlineData("slush at the narrows", $"{Report}slush")]
    [InlineData("open water", $"{Report}open water")]
    public void Read_WhatIsSeenOnTheIce_IsToldWhomToTell(string line, string fault) =>
        Assert.Equal(fault, CommandText.Read(line, chat.Catalog).Fault);

    [Theory]
    [InlineData("walleye 24ft slush in the hole")]
    [InlineData("open water walleye")]
    [InlineData("current 0.1m/s walleye 20ft")]
    [InlineData("the perch went through 18ft")]
    [InlineData("emergency walleye rig")]
    public void Read_WhatIsAboutARig_IsAPlan(string line) => Assert.Equal("rig plan", CommandText.Read(line, chat.Catalog).Value?.Path);

    [Fact]
    public void Read_AReport_IsAReport() => Assert.Equal("ice report", CommandText.Read("ice Loon Basin narrows fell through", chat.Catalog).Value?.Path);
}
