using CrewBot.Storage.Connections;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Tests.Connections;

public sealed class PreparedConnectionTests : IAsyncLifetime
{
    private readonly TemporaryFolder _folder = new();
    private PreparedConnection _connection = null!;

    [Fact]
    public void Query_EveryKindOfParameter_ComesBackAsItWasGiven()
    {
        var given = new { Text = "ice – °F", Long = long.MinValue, Whole = 7, Yes = true, NoText = (string?)null, NoLong = (long?)null };

        var row = Assert.Single(_connection.Read(
            "SELECT @Text, @Long, @Whole, @Yes, @NoText, @NoLong",
            given,
            row => (row.GetString(0), row.GetInt64(1), row.GetInt32(2), row.GetBoolean(3), row.IsDBNull(4), row.IsDBNull(5))));

        Assert.Equal(("ice – °F", long.MinValue, 7, true, true, true), row);
    }

    [Fact]
    public void Query_TheSameTextAgain_AsksWithTheNewValues()
    {
        Assert.Equal([1], Asked(1));
        Assert.Equal([2], Asked(2));

        List<long> Asked(long number) => _connection.Query("SELECT @Number AS number", new { Number = number }, Column.Long);
    }

    [Fact]
    public void Query_ParameterThatHasNoValueOrAnotherType_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => _connection.Execute("SELECT @Missing", new { Other = 1 }));
        Assert.Throws<ArgumentException>(() => _connection.Execute("SELECT @At", new { At = DateTimeOffset.UnixEpoch }));
    }

    [Fact]
    public void Execute_Fails_SaysWhyAndCanBeRunAgain()
    {
        _connection.Execute("CREATE TABLE fish (number INTEGER PRIMARY KEY) STRICT");
        Assert.Equal(1, Add(1));

        Assert.Equal(19, Assert.Throws<SqliteException>(() => Add(1)).SqliteErrorCode); // SQLITE_CONSTRAINT
        Assert.Equal(1, Add(2));

        int Add(long number) => _connection.Execute("INSERT INTO fish (number) VALUES (@Number)", new { Number = number });
    }

    public async ValueTask InitializeAsync()
    {
        var connection = new SqliteConnection($"Data Source={_folder.File()};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        _connection = new PreparedConnection(connection);
    }

    public async ValueTask DisposeAsync()
    {
        await _connection.DisposeAsync();
        _folder.Dispose();
    }
}
