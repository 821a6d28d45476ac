using System.Diagnostics;
using System.Globalization;
using CrewBot.Discord.StandIn;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Discord.Measurements;

/// <summary>Tells one report of ice to many channels, as fast as the platform's limits let it, while commands are answered.</summary>
internal static class RelayMeasurement
{
    private const int Channels = 500;
    private const int PerSecond = 100;
    private const ulong FirstChannel = 1_700_000_000_000_000_000;

    private static readonly CancellationToken Never = CancellationToken.None;

    public static async Task RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("crewbot-");
        try
        {
            await MeasureAsync(Path.Combine(folder.FullName, "crew.db"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task MeasureAsync(string database)
    {
        var bot = await Bot.StartAsync(MeasuredProgram.CrewBot, database);
        await using (bot)
        {
            var limit = new FiftyASecond();
            bot.Server.Settings.Bucket = (5, 5); // five messages in five seconds for each channel
            bot.Server.Faults.Otherwise = limit.Judge;
            var report = bot.Server.Interactions.Command("ice", InteractionMaker.Subcommand(
                "report",
                InteractionMaker.Option("water", 3, "Loon Basin"),
                InteractionMaker.Option("spot", 3, "north bay"),
                InteractionMaker.Option("clear", 3, "5in")));
            await FollowAsync(database, report["guild_id"]!.GetValue<string>());
            bot.Socket = await bot.Server.NextActiveAsync(Never);
            bot.Server.Settings.Records = false;
            var load = new Load(bot);
            await load.InFlightAsync(16, 3_200); // warm-up: what has run often is compiled again
            await load.PacedAsync(PerSecond, 5 * PerSecond);
            load.TakeTimes();

            await load.PacedAsync(PerSecond, 10 * PerSecond);
            Print("nothing else", load);

            var watch = Stopwatch.StartNew();
            await StandInServer.DispatchAsync(bot.Socket, "INTERACTION_CREATE", report);
            var told = ToldAsync(limit, watch);
            while (!told.IsCompleted)
            {
                await load.PacedAsync(PerSecond, PerSecond);
            }

            Print("while a report is relayed", load);
            var took = await told;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Channels} channels told after {took.TotalSeconds:0.0} s, {limit.Refused} requests too early"));
        }
    }

    private static async Task<TimeSpan> ToldAsync(FiftyASecond limit, Stopwatch watch)
    {
        while (limit.Told < Channels)
        {
            await Task.Delay(TimeSpan.FromMilliseconds(20));
        }

        return watch.Elapsed;
    }

    private static async Task FollowAsync(string path, string crew)
    {
        await using var database = await Database.OpenAsync(path, Never);
        await database.WriteAsync(
            crew,
            async session =>
            {
                var water = await new WaterRepository(session).AddAsync("Loon Basin");
                for (var channel = 0u; channel < Channels; channel++)
                {
                    await new IceFollowerRepository(session).FollowAsync(water, (FirstChannel + channel).ToString(CultureInfo.InvariantCulture));
                }
            },
            Never);
    }

    private static void Print(string when, Load load)
    {
        var (median, worst) = load.TakeTimes();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{PerSecond} commands a second, {when}: acknowledged p50 {median:0.00} ms, p99 {worst:0.00} ms"));
    }
}
