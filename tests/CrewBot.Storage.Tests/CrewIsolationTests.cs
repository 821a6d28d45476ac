using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Breaks;
using CrewBot.Storage.Buttons;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;
using CrewBot.Storage.Ice;
using CrewBot.Storage.Outbox;
using CrewBot.Storage.Requests;
using CrewBot.Storage.Tests.Derbies;
using CrewBot.Storage.Trips;
using Dapper;
using Microsoft.Data.Sqlite;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests;

/// <summary>Every method of every repository, called by crew alpha with what belongs to crew bravo.</summary>
public sealed class CrewIsolationTests : DatabaseTest
{
    private static readonly DateTimeOffset At = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    // Quantities hold no secrets, and JSON can't write them.
    private static readonly JsonSerializerOptions WithoutQuantities = new()
    {
        TypeInfoResolver = new DefaultJsonTypeInfoResolver
        {
            Modifiers = { info => info.Properties.Where(property => property.PropertyType.Namespace == "UnitsNet").ToList().ForEach(property => info.Properties.Remove(property)) },
        },
    };

    // Values of crew bravo, by the type of a parameter. A method with a new type of parameter fails until it has one here.
    private readonly Dictionary<Type, object?[]> _values = new()
    {
        [typeof(string)] = ["bravo"],
        [typeof(int)] = [100],
        [typeof(decimal)] = [49m],
        [typeof(DateTimeOffset)] = [At.AddDays(1)],
        [typeof(DateTimeOffset?)] = [At.AddDays(1), null],
        [typeof(UnitSystem)] = [UnitSystem.Metric],
        [typeof(CrewRole)] = [CrewRole.Owner],
        [typeof(long?)] = [null],
        [typeof(int?)] = [2026, null],
        [typeof(PostManner)] = [new PostManner { LateLine = "alpha" }],
        [typeof(Func<int, LedgerEvent>)] = [(Func<int, LedgerEvent>)(at => new Joined(at, At, 1, 2, "bravo"))],
        [typeof(Func<int, int, Entered>)] = [(Func<int, int, Entered>)((at, entry) => EnteredOf(at, entry, 2, 1))],
        [typeof(ExactLength?)] = [null],
        [typeof(ExactLength)] = [ExactLength.From(8, LengthUnit.Inch)],
        [typeof(bool)] = [true],
        [typeof(IceUse)] = [IceUse.OnFoot],
        [typeof(IceChannel)] = [new IceChannel("bravo", true)],
        [typeof(BreakPlace)] = [BreakPlace.AtJoin],
        [typeof(BreakLook)] = [BreakLook.Curl],
        [typeof(WaterRule)] = [new WaterRule("lines", "9", "alpha")],
    };

    public static TheoryData<Type, string> Methods
    {
        get
        {
            var methods = new TheoryData<Type, string>();
            foreach (var repository in Repositories)
            {
                foreach (var method in MethodsOf(repository))
                {
                    methods.Add(repository, method.Name);
                }
            }

            return methods;
        }
    }

    public static TheoryData<Type> AllRepositories => [.. Repositories];

    private static IEnumerable<Type> Repositories =>
        typeof(Database).Assembly.GetTypes().Where(type => type.Name.EndsWith("Repository", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(AllRepositories))]
    public void Repository_Statements_AllNameTheCrew(Type repository)
    {
        Assert.Equal([typeof(CrewSession)], Assert.Single(repository.GetConstructors()).GetParameters().Select(parameter => parameter.ParameterType));
        var statements = repository.GetFields(BindingFlags.NonPublic | BindingFlags.Static)
            .Where(field => field.IsLiteral && field.Name.EndsWith("Sql", StringComparison.Ordinal))
            .ToList();
        Assert.NotEmpty(statements);
        Assert.All(statements, statement => Assert.Contains("@CrewId", (string)statement.GetRawConstantValue()!, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public async Task Method_CalledByAnotherCrew_NeitherReadsNorChangesAnything(Type repository, string method)
    {
        var before = await DumpAsync();
        var called = 0;
        foreach (var overload in MethodsOf(repository).Where(candidate => candidate.Name == method))
        {
            foreach (var arguments in ArgumentsOf(overload))
            {
                var result = await CallAsync(overload, arguments);
                Assert.DoesNotContain("bravo-secret", result, StringComparison.Ordinal);
                called++;
            }
        }

        Assert.True(called > 0);
        Assert.Equal(before, await DumpAsync());
    }

    protected override async Task PrepareAsync()
    {
        foreach (var crew in (string[])[Alpha, Bravo])
        {
            await WriteAsync(crew, async session =>
            {
                var members = new MemberRepository(session);
                await members.FindOrAddAsync(crew, $"{crew}-secret before");
                var member = await members.FindOrAddAsync(crew, $"{crew}-secret");
                var waters = new WaterRepository(session);
                var water = await waters.AddAsync(crew);
                await waters.AddNameAsync(water, $"{crew}-secret");
                var spot = await waters.AddSpotAsync(water, $"{crew}-secret");
                await waters.SetRuleAsync(water, new WaterRule("lines", "1", $"{crew}-secret"));
                var settings = new CrewRepository(session);
                await settings.SetNameAsync($"{crew}-secret");
                await settings.SetUnitsAsync(UnitSystem.Customary);
                await settings.SetChannelAsync("bravo", $"{crew}-secret");
                await new PostRepository(session).SayAsync("bravo", $"{crew}-secret", $"{crew}-secret", At);
                _values[typeof(Post)] = [await new PostRepository(session).FindAsync("bravo")];
                await new ButtonRepository(session).KeepAsync("bravo", $"{crew}-secret", At);
                await new RequestRepository(session).RememberAsync("bravo", member.Id, $"{crew}-secret", At);
                var catches = new CatchRepository(session);
                var entry = new CatchEntry
                {
                    MemberId = member.Id,
                    Species = "walleye",
                    CaughtAt = At,
                    LoggedAt = At,
                    WaterId = water,
                    SpotId = spot,
                    Note = $"{crew}-secret",
                };
                var fish = await catches.FindAsync(await catches.AddAsync(entry));
                await catches.ReplaceAsync(fish!, entry, member.Id, At);
                await new LineSpellRepository(session).AddAsync(member.Id, water, "small-jig", 1, At);
                var derby = await PrepareDerbyAsync(session, member.Id, fish!, $"{crew}-secret");
                _values[typeof(Derby)] = [derby];
                var trip = new Trip(member.Id, water, At, At.AddHours(9)) { Note = $"{crew}-secret" };
                await new TripRepository(session).AddAsync(trip);
                _values[typeof(Trip)] = [trip with { Number = 2 }];
                var gear = new Gear { Kind = BoxKind.Line, Name = $"{crew}-secret" };
                await new BoxRepository(session).AddAsync(member.Id, gear);
                var pull = ExactMass.From(4, MassUnit.Pound);
                var broke = new BreakOff
                {
                    MemberId = member.Id,
                    Place = BreakPlace.AtJoin,
                    Look = BreakLook.Curl,
                    BrokeAt = At,
                    Knot = $"{crew}-secret",
                    Line = "braid",
                    Test = pull,
                    Pull = pull,
                };
                await new BreakOffRepository(session).AddAsync(broke);
                await PrepareIceAsync(session, member.Id, water, $"{crew}-secret");
                _values[typeof(Gear)] = [gear];
                _values[typeof(BreakOff)] = [broke];
                _values[typeof(CatchEntry)] = [entry];
                _values[typeof(LoggedCatch)] = [fish];
                _values[typeof(long)] = [.. new[] { member.Id, water, spot }.Distinct().Cast<object>()];
            });
        }
    }

    private async Task PrepareIceAsync(CrewSession session, long member, long water, string secret)
    {
        var reports = new IceReportRepository(session);
        var ice = new IceEntry(member, water, At, new IcePage { Hazards = [IceHazard.OpenWater], Note = secret }) { Spot = secret, MeasuredAt = At };
        var number = await reports.AddAsync(ice);
        await reports.ReplaceAsync(number, ice, member, secret, At);
        var followers = new IceFollowerRepository(session);
        await followers.FollowAsync(water, secret);
        await followers.NoteAsync(number, new IceChannel(secret, true));
        await new IcePartnerRepository(session).AgreeAsync(secret, true);
        await new IceRuleRepository(session).ChooseAsync(secret);
        await new IceRuleRepository(session).SetAsync(IceUse.OnFoot, ExactLength.From(9, LengthUnit.Inch), secret);
        _values[typeof(IceEntry)] = [ice];
    }

    private static async Task<Derby> PrepareDerbyAsync(CrewSession session, long member, LoggedCatch fish, string secret)
    {
        var derby = new Derby
        {
            Name = secret,
            CreatedBy = member,
            Place = secret,
            Zone = "UTC",
            Settings = DerbyRepositoryTests.Settings with { Limits = new() { Waters = [secret] } },
        };
        var number = await new DerbyRepository(session).AddAsync(derby, At);
        var ledger = new LedgerRepository(session);
        await ledger.AppendAsync(number, at => new Joined(at, At, member, member, secret));
        await ledger.EnterAsync(number, (at, entry) => EnteredOf(at, entry, member, fish.Number), secret);
        return derby;
    }

    private static Entered EnteredOf(int at, int entry, long member, long caught) => new(at, At, member, entry, member)
    {
        Catch = caught,
        Species = "walleye",
        Measured = ExactLength.From(20, LengthUnit.Inch),
        CaughtAt = At,
    };

    private static MethodInfo[] MethodsOf(Type repository) =>
        repository.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly);

    private IEnumerable<object?[]> ArgumentsOf(MethodInfo method) => method.GetParameters()
        .Aggregate(
            (IEnumerable<object?[]>)[[]],
            (lists, parameter) => lists.SelectMany(list => _values[parameter.ParameterType].Select(value => (object?[])[.. list, value])));

    private Task<string> CallAsync(MethodInfo method, object?[] arguments) => WriteAsync(Alpha, async session =>
    {
        var repository = Activator.CreateInstance(method.DeclaringType!, session)!;
        try
        {
            var task = (Task)method.Invoke(repository, arguments)!;
            await task;
            return JsonSerializer.Serialize(task.GetType().GetProperty("Result")?.GetValue(task), WithoutQuantities);
        }
        catch (SqliteException refused) when (refused.SqliteErrorCode == SQLitePCL.raw.SQLITE_CONSTRAINT)
        {
            return "refused";
        }
    });

    private async Task<string> DumpAsync()
    {
        await using var connection = new SqliteConnection($"Data Source={DatabasePath};Pooling=False;Mode=ReadOnly");
        await connection.OpenAsync(Cancellation);
        var tables = await connection.QueryAsync<string>(
            "SELECT m.name FROM sqlite_schema m WHERE m.type = 'table' AND EXISTS (SELECT 1 FROM pragma_table_info(m.name) WHERE name = 'crew_id')");
        var rows = new List<object> { await connection.QueryAsync($"SELECT * FROM crew WHERE key = '{Bravo}'") };
        foreach (var table in tables.Order())
        {
            var own = (await connection.QueryAsync(
                $"SELECT * FROM {table} WHERE crew_id = (SELECT id FROM crew WHERE key = '{Bravo}')")).ToList();
            Assert.NotEmpty(own);
            rows.AddRange(own);
        }

        return JsonSerializer.Serialize(rows);
    }
}
