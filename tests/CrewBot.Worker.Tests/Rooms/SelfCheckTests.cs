using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms;

namespace CrewBot.Worker.Tests.Rooms;

public sealed class SelfCheckTests
{
    [Fact]
    public async Task RunAsync_FolderOfPhotosIsAFile_SaysWhatToDo()
    {
        using var folder = new TemporaryFolder();
        var desk = new Desk();
        var settings = new Settings { Database = folder.File("crew.db"), PhotoFolder = folder.Write("photos", "in the way") };

        Assert.Equal(1, await new SelfCheck(settings, desk.Surroundings()).RunAsync(TestContext.Current.CancellationToken));
        Assert.Contains("photos is a file; set CrewBot:PhotoFolder to the path of a folder", desk.Output, StringComparison.Ordinal);
    }
}
