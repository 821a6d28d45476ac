using System.Text.Json;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;
using CrewBot.Storage.Schema;
using Dapper;
using Microsoft.Data.Sqlite;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests.Ice;

/// <summary>What a report comes to lies beside it, however it got there.</summary>
public sealed class IceSummaryTests : DatabaseTest
{
    private const int BeforeSummaries = 13;
    private const string Summaries = "SELECT number, least_nm, most_nm, counts_nm FROM ice_report ORDER BY number";

    private static readonly DateTimeOffset At = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    private static IceEntry[] Entries { get; } =
    [
        Of([new(Inches(5), Inches(2), null, null)]), // 6 in of clear ice, 7 in all
        Of([new(Inches(9), null, null, null), new(null, Inches(6), null, null), new(null, null, Inches(7), null)]),
        Of([new(null, null, Inches(14), IceKind.Grey)]),
        Of([]) with { MeasuredAt = null },
        Of([new(Inches(9), null, null, null)]) with { Spot = null },
        Of([new(Inches(9), null, null, null)]) with { MeasuredAt = null },
        Of([new(Inches(9), null, null, null)], hearsay: true),
        Of([new(IceThickness.Of(ExactLength.From(15.23m, LengthUnit.Centimeter)), null, null, null)]),
    ];

    [Fact]
    public async Task AddAsync_AnyReport_SummarisesWhatSupportsAnAnswer()
    {
        await WriteAsync(Alpha, async session =>
        {
            foreach (var entry in Entries)
            {
                await new IceReportRepository(session).AddAsync(entry);
            }
        });

        Assert.Equal(
            [
                (1, 7 * 25_400_000L, 7 * 25_400_000L, 6 * 25_400_000L), (2, 6 * 25_400_000L, 9 * 25_400_000L, 3 * 25_400_000L),
                (3, 14 * 25_400_000L, 14 * 25_400_000L, 0L), (4, null, null, null), (5, null, null, null), (6, null, null, null), (7, null, null, null),
                (8, 152_300_000L, 152_300_000L, 152_300_000L),
            ],
            await ReadAsync(DatabasePath));
    }

    [Fact]
    public async Task BringUp_ReportsFromBefore_AreSummarisedAsNewOnesAre()
    {
        await WriteAsync(Alpha, async session =>
        {
            foreach (var entry in Entries)
            {
                await new IceReportRepository(session).AddAsync(entry);
            }
        });
        using var folder = new TemporaryFolder();
        await using (var old = new SqliteConnection($"Data Source={folder.File()};Pooling=False"))
        {
            await old.OpenAsync(Cancellation);
            await Shape.BringUpAsync(old, folder.File(), BeforeSummaries);
            await old.ExecuteAsync("INSERT INTO crew (id, key) VALUES (1, 'alpha'); INSERT INTO member (id, crew_id, name) VALUES (1, 1, 'Ana'); INSERT INTO water (id, crew_id, name) VALUES (1, 1, 'Loon Basin')");
            foreach (var (number, entry) in Entries.Index())
            {
                await old.ExecuteAsync(
                    """
                    INSERT INTO ice_report (crew_id, number, member_id, water_id, spot, spot_plain, at_ms, measured_at_ms, filed_at_ms, is_open, page)
                    VALUES (1, @Number, 1, 1, @Spot, '', 0, @MeasuredAtMs, 0, 0, @Page)
                    """,
                    new
                    {
                        Number = number + 1,
                        entry.Spot,
                        MeasuredAtMs = entry.MeasuredAt?.ToUnixTimeMilliseconds(),
                        Page = JsonSerializer.Serialize(entry.Page, IceJson.Default.IcePage),
                    });
            }

            await Shape.BringUpAsync(old, folder.File());
        }

        Assert.Equal(await ReadAsync(DatabasePath), await ReadAsync(folder.File()));
    }

    [Fact]
    public async Task ReplaceAsync_AReport_SummarisesItAnew()
    {
        await WriteAsync(Alpha, async session =>
        {
            var reports = new IceReportRepository(session);
            var number = await reports.AddAsync(Entries[0]);
            await reports.ReplaceAsync(number, Of([new(Inches(4), null, null, null)]), 1, "read the tape wrong", At);
        });

        Assert.Equal([(1, 4 * 25_400_000L, 4 * 25_400_000L, 4 * 25_400_000L)], await ReadAsync(DatabasePath));
    }

    protected override Task PrepareAsync() => WriteAsync(Alpha, async session =>
    {
        await new MemberRepository(session).FindOrAddAsync("ana", "Ana");
        await new WaterRepository(session).AddAsync("Loon Basin");
    });

    private static async Task<List<(long Number, long? Least, long? Most, long? Counts)>> ReadAsync(string path)
    {
        await using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadOnly");
        await connection.OpenAsync(Cancellation);
        return [.. await connection.QueryAsync<(long, long?, long?, long?)>(Summaries)];
    }

    private static IceEntry Of(IceHole[] holes, bool hearsay = false) =>
        new(1, 1, At, new IcePage { Holes = holes, IsHearsay = hearsay }) { Spot = "north bay", MeasuredAt = At };

    private static IceThickness? Inches(int inches) => IceThickness.Of(ExactLength.From(inches, LengthUnit.Inch));
}
