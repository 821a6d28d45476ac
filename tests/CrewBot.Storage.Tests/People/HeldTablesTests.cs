using CrewBot.Storage.People;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Tests.People;

public sealed class HeldTablesTests : DatabaseTest
{
    [Fact]
    public async Task All_TablesThatNameAPerson_SayWhatBecomesOfTheirRows()
    {
        await using var connection = new SqliteConnection($"Data Source={DatabasePath};Pooling=False;Mode=ReadOnly");
        await connection.OpenAsync(Cancellation);
        var naming = await connection.QueryAsync<(string Table, string Column)>("""
            SELECT m.name, f."from" FROM sqlite_schema m, pragma_foreign_key_list(m.name) f
            WHERE m.type = 'table' AND f."table" = 'member' AND f."from" <> 'crew_id'
            UNION
            SELECT m.name, c.name FROM sqlite_schema m, pragma_table_info(m.name) c
            WHERE m.type = 'table' AND c.name <> 'best_members' AND (c.name LIKE '%member%' OR c.name LIKE '%angler%' OR c.name = 'platform_id' AND m.name <> 'member')
            UNION
            SELECT 'member', 'id'
            UNION
            SELECT 'trip', 'roster' -- names people within its text
            UNION
            SELECT 'post', 'place' -- may be one person's own
            UNION
            SELECT 'long_button', 'command' -- may name people within its text
            """);

        var listed = HeldTables.All.Select(table => (table.Name, table.Column)).ToList();
        Assert.All(naming, pair => Assert.True(
            listed.Contains(pair),
            $"{pair.Table}.{pair.Column} names people: say in CrewBot.Storage/People/HeldTables.cs what becomes of it when they are erased."));
        Assert.Equal(listed.Order(), naming.Order());
    }

    [Fact]
    public void All_Tables_AreOnThePrivacyPage()
    {
        var rows = File.ReadLines(Page()).Where(line => line.StartsWith("| `", StringComparison.Ordinal)).Select(line => line.Split('`')[1]);

        Assert.Equal(HeldTables.All.Select(table => table.Name).Distinct().Order(), rows.Order());
    }

    [Fact]
    public void All_Statements_NameTheCrewAndThePerson() => Assert.All(HeldTables.All, table =>
    {
        Assert.Contains("@CrewId", table.RowsSql, StringComparison.Ordinal);
        Assert.Contains("@MemberId", table.RowsSql, StringComparison.Ordinal);
        if (table.EraseSql != HeldTable.StaysSql)
        {
            Assert.Contains("@CrewId", table.EraseSql, StringComparison.Ordinal);
            Assert.Contains("@MemberId", table.EraseSql, StringComparison.Ordinal);
        }
    });
    private static string Page()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside their repository.");
        }

        return Path.Combine(folder.FullName, "docs", "privacy.md");
    }
}
