using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Tests.Pictures;

/// <summary>Draws three bytes for every picture.</summary>
internal sealed class FakeDrawer : IPictureDrawer
{
    public Task<Reply> IllustrateAsync(Reply reply, CancellationToken cancellationToken) => Task.FromResult(reply with
    {
        Files = [.. reply.Pictures.Select(picture => new ReplyFile($"{picture.Kind}.png", "image/png", "png"u8.ToArray()) { AlternativeText = "A rig." })],
    });
}
