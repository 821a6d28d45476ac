using System.Text;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class FrameReaderTests
{
    [Theory]
    [InlineData("""{"op":0,"d":{"a":[1,{"op":9}]},"s":42,"t":"READY"}""")]
    [InlineData("""{"t":"READY","s":42,"op":0,"d":{"a":[1,{"op":9}]}}""")]
    [InlineData("""{ "new_thing" : {"op":7} , "d" : {"a":[1,{"op":9}]} , "t" : "READY", "s":42, "op" : 0 }""")]
    public void TryRead_AnyOrderAndUnknownFields_FindsTheEnvelope(string text)
    {
        Assert.True(FrameReader.TryRead(Encoding.UTF8.GetBytes(text), out var frame));

        Assert.Equal(GatewayOperation.Dispatch, frame.Operation);
        Assert.Equal(42, frame.Sequence);
        Assert.Equal("READY", frame.Event);
        Assert.Equal("""{"a":[1,{"op":9}]}""", Encoding.UTF8.GetString(frame.Data.Span));
    }

    [Theory]
    [InlineData("""{"op":11}""")]
    [InlineData("""{"op":11,"d":null,"s":null,"t":null}""")]
    [InlineData("""{"op":11,"d":null,"s":"soon","t":{"odd":1}}""")]
    public void TryRead_MissingNullOrOddFields_LeavesThemOut(string text)
    {
        Assert.True(FrameReader.TryRead(Encoding.UTF8.GetBytes(text), out var frame));

        Assert.Equal(GatewayOperation.HeartbeatAck, frame.Operation);
        Assert.Null(frame.Sequence);
        Assert.Null(frame.Event);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("42")]
    [InlineData("{}")]
    [InlineData("""{"op":"zero"}""")]
    [InlineData("""{"op":0,"d":{"cut":"of""")]
    [InlineData("""{"op":0}}""")]
    [InlineData("<html>")]
    public void TryRead_NoFrame_RefusesWithoutThrowing(string text)
    {
        Assert.False(FrameReader.TryRead(Encoding.UTF8.GetBytes(text), out _));
    }
}
