using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Requests;
using CrewBot.Storage.Schema;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Tests.Schema;

public sealed class ShapeTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task OpenAsync_NoFileYet_MakesTheNewestShapeInAFileOfItsOwnersAlone()
    {
        await using (await Database.OpenAsync(_folder.File(), Cancellation))
        {
        }

        await using var connection = Open();
        Assert.Equal(Shape.Newest, await Shape.CheckAsync(connection, "file"));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_folder.File()));
        }
    }

    [Fact]
    public async Task OpenAsync_EveryTable_IsStrict()
    {
        await using (await Database.OpenAsync(_folder.File(), Cancellation))
        {
        }

        await using var connection = Open();
        var loose = await connection.QueryAsync<string>(
            "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0");
        Assert.Equal(["SchemaVersions"], loose.Where(name => !name.StartsWith("sqlite", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task OpenAsync_ManyAtOnceOnANewFile_AllFindTheNewestShape()
    {
        var opened = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => Database.OpenAsync(_folder.File(), Cancellation))));
        foreach (var database in opened)
        {
            await database.DisposeAsync();
        }

        await using var connection = Open();
        Assert.Equal(Shape.Newest, await Shape.CheckAsync(connection, "file"));
    }

    [Fact]
    public async Task OpenAsync_FileOfANewerProgram_IsRefusedInALineAndLeftAlone()
    {
        await using (await Database.OpenAsync(_folder.File(), Cancellation))
        {
        }

        await using (var connection = Open())
        {
            await connection.ExecuteAsync($"PRAGMA user_version = {Shape.Newest + 1}");
        }

        var refusal = await Assert.ThrowsAsync<StorageException>(() => Database.OpenAsync(_folder.File(), Cancellation));

        Assert.Equal(
            $"{_folder.File()} was written by a newer CrewBot (shape {Shape.Newest + 1}; this one knows {Shape.Newest}): start the newer program.",
            refusal.Message);
    }

    [Fact]
    public async Task OpenAsync_DatabaseOfAnotherProgram_IsRefusedAndLeftAlone()
    {
        await using (var connection = Open())
        {
            await connection.ExecuteAsync("CREATE TABLE tackle (name TEXT)");
        }

        var refusal = await Assert.ThrowsAsync<StorageException>(() => Database.OpenAsync(_folder.File(), Cancellation));

        Assert.Contains("another program", refusal.Message, StringComparison.Ordinal);
        await using var after = Open();
        Assert.Equal(["tackle"], await after.QueryAsync<string>("SELECT name FROM sqlite_schema WHERE type = 'table'"));
    }

    [Fact]
    public async Task OpenAsync_FileOfTheFirstShapeWithDataInIt_KeepsIt()
    {
        await using (var old = Open())
        {
            await Shape.BringUpAsync(old, "file", to: 1);
            await old.ExecuteAsync("""
                INSERT INTO crew (id, key, units, zone) VALUES (1, 'alpha', 'metric', 'America/Winnipeg');
                INSERT INTO member (id, crew_id, platform_id, name, role) VALUES (1, 1, 'ana', 'Ana', 'owner');
                INSERT INTO water (id, crew_id, name) VALUES (1, 1, 'Loon Basin');
                INSERT INTO water_name (crew_id, plain, water_id, name) VALUES (1, 'loon basin', 1, 'Loon Basin');
                INSERT INTO handled_request (crew_id, request_id, member_id, answer, handled_at_ms) VALUES (1, 'r1', 1, 'first', 1);
                """);
            Assert.Equal(1, await Shape.CheckAsync(old, "file"));
        }

        await using var database = await Database.OpenAsync(_folder.File(), Cancellation);

        Assert.Equal(Shape.Newest, await database.Writing.QuerySingleAsync<int>("PRAGMA user_version"));
        Assert.Equal("Ana", (await database.ReadAsync("alpha", session => new MemberRepository(session).FindAsync("ana"), Cancellation))!.Name);
        Assert.Equal("Loon Basin", Assert.Single(await database.ReadAsync("alpha", session => new WaterRepository(session).AllAsync(), Cancellation)).Name);
        Assert.Equal("first", await database.ReadAsync("alpha", session => new RequestRepository(session).FindAnswerAsync("r1"), Cancellation));
    }

    [Fact]
    public async Task OpenAsync_FileOfTheSecondShapeWithCatchesInIt_KeepsThemWithoutASpot()
    {
        await using (var old = Open())
        {
            await Shape.BringUpAsync(old, "file", to: 2);
            await old.ExecuteAsync("""
                INSERT INTO crew (id, key) VALUES (1, 'alpha');
                INSERT INTO member (id, crew_id, platform_id, name) VALUES (1, 1, 'ana', 'Ana');
                INSERT INTO catch_entry (crew_id, number, member_id, species, length_nm, length_unit, caught_at_ms, offset_min, logged_at_ms)
                VALUES (1, 1, 1, 'walleye', 571500000, 'in', 1, -360, 2);
                """);
        }

        await using var database = await Database.OpenAsync(_folder.File(), Cancellation);

        var fish = Assert.Single(await database.ReadAsync("alpha", session => new CatchRepository(session).AllAsync(), Cancellation));
        Assert.Equal(22.5m, fish.Entry.Length!.Value.Number);
        Assert.Null(fish.Entry.SpotId);
    }

    [Fact]
    public async Task OpenAsync_FileOfTheNinthShapeWithCatchesInIt_TalliesThemBySeason()
    {
        // 1 July 2026, 04:59:59 and 05:00 in UTC: the first second of the season where the clock stands at UTC-5, and the last before it.
        await using (var old = Open())
        {
            await Shape.BringUpAsync(old, "file", to: 9);
            await old.ExecuteAsync("""
                INSERT INTO crew (id, key) VALUES (1, 'alpha');
                INSERT INTO member (id, crew_id, platform_id, name) VALUES (1, 1, 'ana', 'Ana');
                INSERT INTO catch_entry (crew_id, number, member_id, species, length_nm, length_unit, caught_at_ms, offset_min, logged_at_ms, voided_at_ms)
                VALUES (1, 1, 1, 'walleye', 500000000, 'mm', 1782881999000, -300, 1, NULL),
                    (1, 2, 1, 'walleye', 600000000, 'mm', 1782882000000, -300, 1, NULL),
                    (1, 3, 1, 'walleye', 600000000, 'mm', 1782881999000, -299, 1, NULL),
                    (1, 4, 1, 'walleye', NULL, NULL, 1782882000000, -300, 1, NULL),
                    (1, 5, 1, 'walleye', 900000000, 'mm', 1782882000000, -300, 1, 2);
                """);
        }

        await using var database = await Database.OpenAsync(_folder.File(), Cancellation);

        var seasons = await database.ReadAsync(
            "alpha",
            async session => (
                await new TallyRepository(session).OfSeasonAsync(2025), await new TallyRepository(session).OfSeasonAsync(2026)),
            Cancellation);
        Assert.Equal([new CatchTally(1, "Ana", "walleye", 1, 500_000_000, 500_000_000, 1)], seasons.Item1);
        Assert.Equal([new CatchTally(1, "Ana", "walleye", 3, 1_200_000_000, 600_000_000, 3)], seasons.Item2);
    }

    [Fact]
    public async Task OpenAsync_FileOfTheTenthShapeWithAPhotoInIt_KeepsItsLinkWithoutAHash()
    {
        await using (var old = Open())
        {
            await Shape.BringUpAsync(old, "file", to: 10);
            await old.ExecuteAsync("""
                INSERT INTO crew (id, key) VALUES (1, 'alpha');
                INSERT INTO member (id, crew_id, platform_id, name) VALUES (1, 1, 'ana', 'Ana');
                INSERT INTO catch_entry (crew_id, number, member_id, species, caught_at_ms, offset_min, logged_at_ms, photo)
                VALUES (1, 1, 1, 'walleye', 1, -360, 2, 'https://files.example.test/1.jpg');
                """);
        }

        await using var database = await Database.OpenAsync(_folder.File(), Cancellation);

        var fish = await database.ReadAsync(
            "alpha", session => new CatchRepository(session).FindByPhotoAsync("https://files.example.test/1.jpg", null), Cancellation);
        Assert.Equal((1, null), (fish!.Number, fish.Entry.PhotoHash));
    }

    [Fact]
    public async Task OpenAsync_FileOfTheTwentyFirstShapeWithAnAnswerInIt_KeepsItWithoutItsAge()
    {
        await using (var old = Open())
        {
            await Shape.BringUpAsync(old, "file", to: 21);
            await old.ExecuteAsync("""
                INSERT INTO crew (id, key) VALUES (1, 'alpha');
                INSERT INTO member (id, crew_id, platform_id, name) VALUES (1, 1, 'ana', 'Ana');
                INSERT INTO handled_request (crew_id, request_id, member_id, answer, handled_at_ms) VALUES (1, 'r1', 1, 'first', 1);
                """);
        }

        await using var database = await Database.OpenAsync(_folder.File(), Cancellation);

        Assert.Equal("first", await database.ReadAsync("alpha", session => new RequestRepository(session).FindAnswerAsync("r1"), Cancellation));
        Assert.Empty(await database.Writing.QueryAsync<string>("SELECT name FROM sqlite_schema WHERE tbl_name = 'handled_request' AND type = 'index' AND sql IS NOT NULL"));
    }

    public void Dispose() => _folder.Dispose();

    private SqliteConnection Open()
    {
        var connection = new SqliteConnection($"Data Source={_folder.File()};Pooling=False");
        connection.Open();
        return connection;
    }
}
