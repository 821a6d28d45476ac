using CrewBot.Chat.Commands;
using CrewBot.Core.Pictures;
using CrewBot.Worker.Pictures;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Worker.Tests.Pictures;

public sealed class DrawingDeskTests
{
    private static readonly Reply WithPicture = new()
    {
        Headline = "Walleye",
        Lines = ["Tie on a spoon."],
        Pictures = [new Picture { Kind = "rig", Compose = () => new Sketch() }],
    };

    private readonly FakeTimeProvider _clock = new();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task IllustrateAsync_Picture_ComesAsAFileWithItsAlternativeText()
    {
        using var desk = Desk((_, byNight) => [byNight ? (byte)1 : (byte)0]);

        var file = Assert.Single((await desk.IllustrateAsync(WithPicture, Stop)).Files);

        Assert.Equal(("rig.png", "image/png", "A rig."), (file.Name, file.ContentType, file.AlternativeText));
        Assert.Equal([0], file.Content.ToArray());
    }

    [Fact]
    public async Task IllustrateAsync_DrawingFails_TheTextGoesOutAllTheSame()
    {
        using var desk = Desk((_, _) => throw new DllNotFoundException("libSkiaSharp"));

        var reply = await desk.IllustrateAsync(WithPicture, Stop);

        Assert.Equal("Walleye", reply.Headline);
        Assert.Equal("Tie on a spoon.", reply.Lines[0]);
        Assert.Contains("could not be drawn", reply.Lines[1], StringComparison.Ordinal);
        Assert.Empty(reply.Files);
    }

    [Fact]
    public async Task IllustrateAsync_ComposingFails_TheTextGoesOutAllTheSame()
    {
        using var desk = Desk((_, _) => []);
        var broken = WithPicture with { Pictures = [new Picture { Kind = "rig", Compose = () => throw new InvalidOperationException() }] };

        Assert.Equal("Tie on a spoon.", (await desk.IllustrateAsync(broken, Stop)).Lines[0]);
    }

    [Fact]
    public async Task IllustrateAsync_DrawingHangs_PatienceEnds()
    {
        using var hanging = new ManualResetEventSlim();
        using var desk = Desk((_, _) =>
        {
            hanging.Wait(Stop);
            return [];
        });

        var waiting = desk.IllustrateAsync(WithPicture, Stop);
        _clock.Advance(TimeSpan.FromSeconds(11));
        var reply = await waiting;
        hanging.Set();

        Assert.Equal("Tie on a spoon.", reply.Lines[0]);
        Assert.Empty(reply.Files);
    }

    // The gateway asks for a picture and goes on: a drawing on its thread would never let it.
    [Fact]
    public async Task IllustrateAsync_DrawingTakesItsTime_TheThreadOfWhoeverAsksGoesOn()
    {
        using var mayEnd = new ManualResetEventSlim();
        using var desk = Desk((_, _) =>
        {
            mayEnd.Wait(Stop);
            return [];
        });

        var asked = desk.IllustrateAsync(WithPicture, Stop);
        mayEnd.Set();

        Assert.Single((await asked).Files);
    }

    [Fact]
    public async Task IllustrateAsync_TenAtOnce_DrawsNoMoreThanTwo()
    {
        var (now, most) = (0, 0);
        using var both = new CountdownEvent(2);
        using var desk = Desk((_, _) =>
        {
            most = Math.Max(most, Interlocked.Increment(ref now));
            if (!both.IsSet)
            {
                both.Signal();
                both.Wait(Stop);
            }

            Interlocked.Decrement(ref now);
            return [];
        });

        await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => desk.IllustrateAsync(WithPicture, Stop)));

        Assert.Equal(2, most);
    }

    [Fact]
    public async Task IllustrateAsync_ReplyReadBackFromItsStoredForm_IsLeftAsItIs()
    {
        using var desk = Desk((_, _) => throw new InvalidOperationException());
        var stored = ReplyJson.Read(ReplyJson.Write(WithPicture));

        Assert.Equal(WithPicture.Lines, (await desk.IllustrateAsync(stored, Stop)).Lines);
    }

    private DrawingDesk Desk(Func<PictureData, bool, byte[]> draw) => new(draw, _clock, NullLogger<DrawingDesk>.Instance);

    private sealed record Sketch() : PictureData("A rig.");
}
