using CrewBot.Worker.Rooms.Editing;

namespace CrewBot.Worker.Tests.Rooms.Editing;

public sealed class CompleterTests
{
    private readonly Completer _completer = new(Commands.Catalog());

    [Theory]
    [InlineData("/", "/rig drop |/rig plan ")]
    [InlineData("/rig p", "/rig plan ")]
    [InlineData("/RIG P", "/rig plan ")]
    [InlineData("rig d", "rig drop ")]
    [InlineData("he", "help ")]
    [InlineData("help r", "rig drop|rig plan")]
    [InlineData("/rig plan ", "species:|mood:|ask:")]
    [InlineData("/rig plan s", "species:")]
    [InlineData("/rig plan species:", "walleye |yellow perch |northern pike ")]
    [InlineData("/rig plan species:wa", "walleye ")]
    [InlineData("/rig plan species:yellow p", "yellow perch ")]
    [InlineData("/rig plan species:\"north", "northern pike ")]
    [InlineData("/rig plan species:walleye ", "mood:|ask:")]
    [InlineData("/rig plan species:walleye mood:ne", "negative |neutral ")]
    [InlineData("/rig drop sp", "")]
    [InlineData("wall", "walleye ")]
    [InlineData("walleye ne", "negative |neutral ")]
    [InlineData("walleye 24ft mo", "mood:")]
    [InlineData("/nothing like it ", "")]
    public void Complete_LineSoFar_OffersWhatFits(string written, string expected) =>
        Assert.Equal(expected, string.Join('|', _completer.Complete(written).Candidates));
}
