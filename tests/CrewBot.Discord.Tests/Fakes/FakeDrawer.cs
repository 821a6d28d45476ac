using CrewBot.Chat.Commands;

namespace CrewBot.Discord.Tests.Fakes;

/// <summary>Draws what a test says.</summary>
internal sealed class FakeDrawer : IPictureDrawer
{
    /// <summary>Draws three bytes, or whatever else a test wants.</summary>
    public Func<Reply, CancellationToken, Task<Reply>> Work { get; set; } = static (reply, _) => Task.FromResult(reply with
    {
        Files = [.. reply.Pictures.Select(picture => new ReplyFile($"{picture.Kind}.png", "image/png", "png"u8.ToArray()) { AlternativeText = picture.AlternativeText })],
    });

    public Task<Reply> IllustrateAsync(Reply reply, CancellationToken cancellationToken) => Work(reply, cancellationToken);
}
