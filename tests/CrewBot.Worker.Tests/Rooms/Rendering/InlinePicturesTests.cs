using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Tests.Rooms.Rendering;

public sealed class InlinePicturesTests
{
    private static readonly ReplyFile Picture = new("rig.png", "image/png", new byte[5000]) { AlternativeText = "A rig." };

    /// <summary>The Kitty graphics protocol, "Transferring pixel data": chunks of at most 4096 characters, m=1 on all but the last (from memory).</summary>
    [Fact]
    public void Write_TerminalOfTheProtocol_SendsThePictureInChunksAndAsksForNoReply()
    {
        var desk = new Desk { OutputIsTerminal = true, Environment = { ["KITTY_WINDOW_ID"] = "1" } };

        new InlinePictures(desk.Surroundings()).Write(Picture);

        var sent = desk.Output.TrimEnd().Split("\u001b\\", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, sent.Length);
        Assert.StartsWith("\u001b_Gf=100,a=T,q=2,c=48,m=1;", sent[0], StringComparison.Ordinal);
        Assert.StartsWith("\u001b_Gm=0;", sent[1], StringComparison.Ordinal);
        var data = string.Concat(sent.Select(chunk => chunk[(chunk.IndexOf(';', StringComparison.Ordinal) + 1)..]));
        Assert.Equal(Picture.Content.ToArray(), Convert.FromBase64String(data));
    }

    [Theory]
    [InlineData(true, "TERM", "xterm-256color")]
    [InlineData(false, "KITTY_WINDOW_ID", "1")]
    public void Write_AnyOtherTerminalOrAFile_WritesNothing(bool isTerminal, string variable, string value)
    {
        var desk = new Desk { OutputIsTerminal = isTerminal, Environment = { [variable] = value } };

        new InlinePictures(desk.Surroundings()).Write(Picture);

        Assert.Empty(desk.Output);
    }

    [Fact]
    public void Write_MultiplexerInBetween_WritesNothing()
    {
        var desk = new Desk { OutputIsTerminal = true, Environment = { ["KITTY_WINDOW_ID"] = "1", ["TMUX"] = "/run/tmux" } };

        new InlinePictures(desk.Surroundings()).Write(Picture);

        Assert.Empty(desk.Output);
    }
}
