using System.Globalization;
using CrewBot.Discord.Gateway;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class CloseCodesTests
{
    // The platform's published table of gateway close codes (documentation of August 2026), with the "reconnect"
    // column; which of the reconnects must identify is drawn from the descriptions of 4003, 4007 and 4009.
    [Theory]
    [InlineData(null, NextStep.Resume)]
    [InlineData(1000, NextStep.Resume)]
    [InlineData(1001, NextStep.Resume)]
    [InlineData(1005, NextStep.Resume)]
    [InlineData(1006, NextStep.Resume)]
    [InlineData(1011, NextStep.Resume)]
    [InlineData(4000, NextStep.Resume)]
    [InlineData(4001, NextStep.Resume)]
    [InlineData(4002, NextStep.Resume)]
    [InlineData(4003, NextStep.Identify)]
    [InlineData(4004, NextStep.GiveUp)]
    [InlineData(4005, NextStep.Resume)]
    [InlineData(4006, NextStep.Resume)]
    [InlineData(4007, NextStep.Identify)]
    [InlineData(4008, NextStep.Resume)]
    [InlineData(4009, NextStep.Identify)]
    [InlineData(4010, NextStep.GiveUp)]
    [InlineData(4011, NextStep.GiveUp)]
    [InlineData(4012, NextStep.GiveUp)]
    [InlineData(4013, NextStep.GiveUp)]
    [InlineData(4014, NextStep.GiveUp)]
    [InlineData(4015, NextStep.Resume)]
    [InlineData(4999, NextStep.Resume)]
    internal void Read_EveryPublishedCode_GivesTheTablesStep(int? code, NextStep expected)
    {
        Assert.Equal(expected, CloseCodes.Read(code).Next);
    }

    [Theory]
    [InlineData(4004, "token")]
    [InlineData(4010, "shard id")]
    [InlineData(4011, "shard count")]
    [InlineData(4012, "Update")]
    [InlineData(4013, "intents")]
    [InlineData(4014, "intents")]
    public void Read_FatalCode_SaysWhatToFixAndNamesTheCode(int code, string remedy)
    {
        var end = CloseCodes.Read(code);

        Assert.Contains(remedy, end.Reason, StringComparison.Ordinal);
        Assert.Contains(code.ToString(CultureInfo.InvariantCulture), end.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', end.Reason);
    }

    [Fact]
    public void Read_SentTooFast_AsksForAPause()
    {
        Assert.True(CloseCodes.Read(4008).Pause > TimeSpan.Zero);
    }
}
