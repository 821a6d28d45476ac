using System.Text;
using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms;

namespace CrewBot.Worker.Tests.Rooms;

public sealed class FileFolderTests : IDisposable
{
    private static readonly Reply WithFile = new()
    {
        Headline = "The log",
        Lines = ["Keep it."],
        Files = [new ReplyFile("catches.csv", "text/csv", Encoding.UTF8.GetBytes("species"))],
    };

    private readonly TemporaryFolder _folder = new();

    [Fact]
    public void Save_NameIsTaken_LeavesTheOldFileAndTakesTheNextName()
    {
        var path = Path.Combine(_folder.Path, "new");
        var folder = new FileFolder(path);
        var first = folder.Save(WithFile);
        File.WriteAllText(Path.Combine(path, "catches.csv"), "mine");

        var second = folder.Save(WithFile);

        Assert.Equal(["Keep it.", $"Written: {Path.Combine(path, "catches.csv")}"], first.Lines);
        Assert.Equal($"Written: {Path.Combine(path, "catches-2.csv")}", second.Lines[1]);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(path, "catches.csv")));
        Assert.Equal("species", File.ReadAllText(Path.Combine(path, "catches-2.csv")));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(path, "catches-2.csv")));
        }
    }

    [Fact]
    public void Save_NameWithAPath_StaysInTheFolder()
    {
        var reply = new FileFolder(_folder.Path).Save(WithFile with { Files = [WithFile.Files[0] with { Name = "../outside.csv" }] });

        Assert.Equal($"Written: {Path.Combine(_folder.Path, "outside.csv")}", reply.Lines[1]);
    }

    [Fact]
    public void Save_FolderIsAFile_RefusesInALine()
    {
        var file = Path.Combine(_folder.Path, "taken");
        File.WriteAllText(file, "");

        Assert.Contains("--files", new FileFolder(file).Save(WithFile).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Save_PictureWhereNothingCanBeWritten_LeavesTheWords()
    {
        var file = _folder.Write("taken", "");
        var picture = new ReplyFile("rig.png", "image/png", new byte[3]) { AlternativeText = "A rig." };

        var reply = new FileFolder(_folder.Path, file).Save(WithFile with { Files = [picture] });

        Assert.Null(reply.Problem);
        Assert.Equal("Keep it.", reply.Lines[0]);
        Assert.Contains("--pictures", reply.Lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task ReadAsync_Files_AreTakenWholeOrRefusedInALine()
    {
        var file = Path.Combine(_folder.Path, "some.csv");
        await File.WriteAllTextAsync(file, "species", TestContext.Current.CancellationToken);
        async Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(string path, int most) =>
            await LocalFiles.Instance.ReadAsync(new Attachment(new Uri(path), "some.csv"), most, TestContext.Current.CancellationToken);

        Assert.Equal("species", Encoding.UTF8.GetString((await ReadAsync(file, 7)).Value.Span));
        Assert.Contains("is larger than", (await ReadAsync(file, 6)).Fault, StringComparison.Ordinal);
        Assert.StartsWith("There is no file", (await ReadAsync(file + "x", 7)).Fault, StringComparison.Ordinal);
        Assert.Contains("can't be read", (await ReadAsync(_folder.Path, 7)).Fault, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();
}
