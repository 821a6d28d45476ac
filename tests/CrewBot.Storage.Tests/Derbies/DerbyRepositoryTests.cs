using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;
using Microsoft.Data.Sqlite;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests.Derbies;

public sealed class DerbyRepositoryTests : DatabaseTest
{
    private static readonly DateTimeOffset At = new(2027, 1, 16, 14, 0, 0, TimeSpan.FromHours(-6));

    internal static DerbySettings Settings { get; } = new()
    {
        Window = new DerbyWindow(At, At.AddHours(7), TimeSpan.FromMinutes(15)),
        Grid = new MeasuringGrid(ExactLength.From(0.25m, LengthUnit.Inch), Rounding.Nearest),
        Scoring = new ScoringRule(
            new PointsMeasure(new Dictionary<string, decimal> { ["walleye"] = 1.5m, ["burbot"] = 0.75m }), new FishSelection(3, 2)),
        Limits = new EntryLimits
        {
            Minimum = ExactLength.From(12.25m, LengthUnit.Inch),
            Species = ["walleye", "burbot"],
            Waters = ["Loon Basin"],
            Kept = false,
            MostEntries = 9,
        },
        Evidence = Evidence.Photo,
        Ties = [TieBreak.BigFish, TieBreak.Earliest],
        Ranking = RankNumbers.Dense,
        Teams = new TeamScoring(IsPooled: false, 2),
        ProtestTime = TimeSpan.FromHours(1),
    };

    [Fact]
    public async Task FindAsync_DerbyWithEverySetting_GivesThemAllBack()
    {
        var (number, _, _) = await CreateAsync();
        await ReopenAsync();

        var found = await ReadAsync(Alpha, session => new DerbyRepository(session).FindAsync(number, memberId: null));

        Assert.Equivalent(Settings, found!.Settings, strict: true);
        Assert.Equal(("Basin day", "channel", "America/Winnipeg"), (found.Name, found.Place, found.Zone));
    }

    [Fact]
    public async Task EventsAsync_OneOfEachKind_GivesTheSameRecordBack()
    {
        var (derby, member, caught) = await CreateAsync();
        var length = ExactLength.From(22.25m, LengthUnit.Inch);
        Func<int, LedgerEvent>[] others =
        [
            at => new Created(at, At, member), at => new Joined(at, At, member, member, "North"), at => new Left(at, At, member, member),
            at => new Witnessed(at, At, member, 1), at => new Amended(at, At, member, 1, length, "misread"), at => new Accepted(at, At, member, 1),
            at => new Refused(at, At, member, 1, "no board"), at => new Penalised(at, At, member, 1, length, "late"),
            at => new Withdrawn(at, At, member, 1), at => new Disputed(at, At, member, 1, "doubt"), at => new Ruled(at, At, member, 1, true, "seen"),
            at => new Closed(at, At, member), at => new Reopened(at, At, member),
        ];
        var entered = Entry(member, caught) with { Weight = ExactMass.From(2.5m, MassUnit.Pound), Water = "Loon Basin", Kept = true, HasPhoto = true };
        await WriteAsync(Alpha, async session =>
        {
            var ledger = new LedgerRepository(session);
            await ledger.EnterAsync(derby, (at, entry) => entered with { Number = at, Entry = entry }, "photo");
            foreach (var write in others)
            {
                await ledger.AppendAsync(derby, write);
            }
        });

        var events = await ReadAsync(Alpha, session => new LedgerRepository(session).EventsAsync(derby));

        Assert.Equal([entered with { Number = 1, Entry = 1 }, .. others.Select((write, at) => write(at + 2))], events);
        Assert.Equal(TimeSpan.FromHours(-6), ((Entered)events[0]).CaughtAt.Offset);
    }

    [Fact]
    public async Task EnterAsync_SameCatchOrPhotoAgain_IsRefusedByTheTable()
    {
        var (derby, member, caught) = await CreateAsync();
        var another = await WriteAsync(Alpha, session => new CatchRepository(session).AddAsync(Fish(member)));
        await EnterAsync(derby, Entry(member, caught), "photo");

        await Assert.ThrowsAsync<SqliteException>(() => EnterAsync(derby, Entry(member, caught), photo: null));
        await Assert.ThrowsAsync<SqliteException>(() => EnterAsync(derby, Entry(member, another), "photo"));

        Assert.Equal(1, await ReadAsync(Alpha, session => new LedgerRepository(session).OfCatchAsync(derby, caught)));
        Assert.Equal(1, await ReadAsync(Alpha, session => new LedgerRepository(session).OfPhotoAsync(derby, "photo")));
        Assert.Single(await ReadAsync(Alpha, session => new LedgerRepository(session).EventsAsync(derby)));
    }

    [Fact]
    public async Task FindAsync_ClosedAndJoined_FollowTheLastEventOfEach()
    {
        var (derby, member, _) = await CreateAsync();
        async Task<(bool Closed, bool Joined)> AfterAsync(Func<int, LedgerEvent> write)
        {
            await WriteAsync(Alpha, session => new LedgerRepository(session).AppendAsync(derby, write));
            var found = (await ReadAsync(Alpha, session => new DerbyRepository(session).FindAsync(derby, member)))!;
            return (found.IsClosed, found.HasJoined);
        }

        Assert.Equal((false, true), await AfterAsync(at => new Joined(at, At, member, member, null)));
        Assert.Equal((true, true), await AfterAsync(at => new Closed(at, At, member)));
        Assert.Equal((true, false), await AfterAsync(at => new Left(at, At, member, member)));
        Assert.Equal((false, false), await AfterAsync(at => new Reopened(at, At, member)));
    }

    [Fact]
    public async Task VoidedAsync_CatchVoidedAfterEntry_SaysSinceWhen()
    {
        var (derby, member, caught) = await CreateAsync();
        await EnterAsync(derby, Entry(member, caught), photo: null);
        var another = await WriteAsync(Alpha, session => new CatchRepository(session).AddAsync(Fish(member)));
        await WriteAsync(Alpha, async session =>
        {
            var catches = new CatchRepository(session);
            await catches.VoidAsync((await catches.FindAsync(caught))!, member, At.AddHours(1));
            await catches.VoidAsync((await catches.FindAsync(another))!, member, At.AddHours(2));
        });

        var voided = await ReadAsync(Alpha, session => new LedgerRepository(session).VoidedAsync(derby));

        Assert.Equal((caught, At.AddHours(1).ToUniversalTime()), (Assert.Single(voided).Key, voided[caught]));
    }

    [Fact]
    public async Task EventsAsync_AfterSomeEvent_ReadsWhatFollowsIt()
    {
        var (derby, member, caught) = await CreateAsync();
        Assert.Equal(0, await ReadAsync(Alpha, session => new LedgerRepository(session).LastAsync(derby)));
        await WriteAsync(Alpha, session => new LedgerRepository(session).AppendAsync(derby, at => new Joined(at, At, member, member, null)));
        var entry = await EnterAsync(derby, Entry(member, caught), photo: null);

        Assert.Equal(2, await ReadAsync(Alpha, session => new LedgerRepository(session).LastAsync(derby)));
        Assert.Equal(2, Assert.Single(await ReadAsync(Alpha, session => new LedgerRepository(session).EventsAsync(derby, after: 1))).Number);
        Assert.Equal([(derby, entry)], await ReadAsync(Alpha, session => new LedgerRepository(session).EntriesAsync(caught)));
    }

    private static CatchEntry Fish(long member) => new() { MemberId = member, Species = "walleye", CaughtAt = At, LoggedAt = At };

    private static Entered Entry(long member, long caught) => new(0, At, member, 0, member)
    {
        Catch = caught,
        Species = "walleye",
        Measured = ExactLength.From(20, LengthUnit.Inch),
        CaughtAt = At,
    };

    private Task<int> EnterAsync(long derby, Entered entered, string? photo) => WriteAsync(
        Alpha, session => new LedgerRepository(session).EnterAsync(derby, (at, entry) => entered with { Number = at, Entry = entry }, photo));

    private Task<(long Derby, long Member, long Catch)> CreateAsync() => WriteAsync(Alpha, async session =>
    {
        var member = await new MemberRepository(session).FindOrAddAsync("ana", "Ana");
        var derby = new Derby { Name = "Basin day", CreatedBy = member.Id, Place = "channel", Zone = "America/Winnipeg", Settings = Settings };
        return (await new DerbyRepository(session).AddAsync(derby, At), member.Id, await new CatchRepository(session).AddAsync(Fish(member.Id)));
    });
}
