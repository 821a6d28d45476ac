using CrewBot.Chat.Commands;
using CrewBot.Discord;
using CrewBot.Discord.Mapping;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Tests.Pictures;
using Microsoft.Extensions.Hosting.Internal;
using Microsoft.Extensions.Logging.Abstractions;

namespace CrewBot.Worker.Tests.Rooms;

public sealed class DiscordRoomServiceTests
{
    // A supervisor does not start again what only a person can mend, code 3; a fault of CrewBot's own must not look like that.
    [Fact]
    public async Task ExitCode_UnexpectedFault_IsNotThatOfARefusedToken()
    {
        var catalog = Commands.Catalog();
        var impossible = new DiscordOptions { Token = new BotToken("any"), ShardCount = 1, ShardIds = [] };
        using var room = new DiscordRoom(
            impossible, catalog, Commands.Dispatcher(catalog), CrewBook.None, new FakeDrawer(), TimeProvider.System, NullLoggerFactory.Instance);
        using var service = new DiscordRoomService(
            room, new Desk().Surroundings(), new ApplicationLifetime(NullLogger<ApplicationLifetime>.Instance));

        await service.StartAsync(TestContext.Current.CancellationToken);
        await Assert.ThrowsAnyAsync<ArgumentException>(() => service.ExecuteTask!);

        Assert.Equal(4, service.ExitCode);
    }
}
