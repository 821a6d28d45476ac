using CrewBot.Worker.Photos;
using Microsoft.Extensions.Logging.Abstractions;

namespace CrewBot.Worker.Tests.Photos;

public sealed class PhotoFolderTests : IDisposable
{
    private static readonly string Hash = new('a', 64);
    private static readonly string OtherHash = new('b', 64);

    private readonly TemporaryFolder _folder = new();
    private readonly PhotoFolder _photos;

    public PhotoFolderTests() => _photos = new PhotoFolder(_folder.File("photos"), 100, NullLogger<PhotoFolder>.Instance);

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact]
    public async Task KeepAsync_SamePhotoInTwoCrews_LiesThereForEach()
    {
        await _photos.KeepAsync("alpha", Hash, new byte[40], Limit);
        await _photos.KeepAsync("alpha", Hash, new byte[40], Limit);
        await _photos.KeepAsync("../bravo", Hash, new byte[40], Limit);

        Assert.Equal(80, PhotoFolder.Used(_folder.File("photos")));
        Assert.Equal(1, _photos.Delete("alpha", [Hash, OtherHash]));
        Assert.Equal(40, PhotoFolder.Used(_folder.Path));
        Assert.Equal(0, _photos.Delete("alpha", [Hash]));
    }

    [Fact]
    public async Task KeepAsync_NoMoreRoom_KeepsWhatIsThere()
    {
        await _photos.KeepAsync("alpha", Hash, new byte[60], Limit);
        await _photos.KeepAsync("alpha", OtherHash, new byte[60], Limit);

        Assert.Equal(60, PhotoFolder.Used(_folder.File("photos")));
    }

    [Fact]
    public async Task KeepAsync_AfterTheFirst_CountsOnWithoutWalkingTheFolder()
    {
        await _photos.KeepAsync("alpha", Hash, new byte[30], Limit);
        await File.WriteAllBytesAsync(Path.Combine(_folder.File("photos"), "put here by hand"), new byte[60], Limit);

        await _photos.KeepAsync("alpha", OtherHash, new byte[30], Limit);

        Assert.Equal(120, PhotoFolder.Used(_folder.File("photos")));
    }

    [Fact]
    public async Task KeepAsync_RoomMadeMeanwhile_IsFound()
    {
        await _photos.KeepAsync("alpha", Hash, new byte[60], Limit);
        _photos.Delete("alpha", [Hash]);
        await _photos.KeepAsync("alpha", OtherHash, new byte[60], Limit);

        Assert.Equal(1, _photos.Delete("alpha", [Hash, OtherHash]));
    }

    [Fact]
    public async Task KeepAsync_FolderCannotBeMade_LetsTheFishBe()
    {
        _folder.Write("photos", "a file in its place");

        await _photos.KeepAsync("alpha", Hash, new byte[60], Limit);

        Assert.Equal(0, _photos.Delete("alpha", [Hash]));
    }

    [Fact]
    public async Task KeepAsync_CannotBePutInItsPlace_LeavesNoPartOfIt()
    {
        await _photos.KeepAsync("alpha", OtherHash, new byte[10], Limit);
        var crew = Assert.Single(Directory.GetDirectories(_folder.File("photos")));
        Directory.CreateDirectory(Path.Combine(crew, Hash));

        await _photos.KeepAsync("alpha", Hash, new byte[40], Limit);

        Assert.Equal(10, PhotoFolder.Used(_folder.File("photos")));
    }

    public void Dispose()
    {
        _photos.Dispose();
        _folder.Dispose();
    }
}
