using System.Globalization;
using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;
using CrewBot.Worker.Demos;
using Microsoft.Extensions.DependencyInjection;

[assembly: AssemblyFixture(typeof(CrewBot.Drawing.Tests.PlayedCrew))]

namespace CrewBot.Drawing.Tests;

/// <summary>
/// A winter, a derby and a trip of invented crews, played through the commands that people use on a database of their own:
/// what their replies put into pictures is what a crew would see.
/// </summary>
public sealed class PlayedCrew : IAsyncLifetime
{
    private static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("America/Winnipeg");

    private static readonly (string Time, string Who, string Said)[] Derby =
    [
        ("2027-01-15 18:00", "Ida", "crew setup zone:America/Winnipeg water:\"Loon Basin\""),
        ("2027-01-15 18:01", "Bo", "crew me units:customary"),
        ("2027-01-15 18:01", "Ida", "crew setup person:Bo role:steward"),
        ("2027-01-15 18:05", "Ida", "derby create name:\"Basin day\" starts:\"tomorrow 08:00\" ends:\"tomorrow 15:00\" best:2 species:\"walleye, perch, pike\" water:\"Loon Basin\" minimum:8in"),
        ("2027-01-15 18:10", "Ana", "derby join"), ("2027-01-15 18:11", "Bo", "derby join"), ("2027-01-15 18:12", "Cy", "derby join"),
        ("2027-01-15 18:13", "Dee", "derby join"), ("2027-01-15 18:14", "Sunniva", "derby join"),
        ("2027-01-16 08:21", "Ana", "derby enter species:walleye length:22.25in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 08:22", "Cy", "derby saw entry:1"),
        ("2027-01-16 09:05", "Bo", "derby enter species:pike length:31in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 09:06", "Ana", "derby saw entry:2"),
        ("2027-01-16 09:40", "Dee", "derby enter species:walleye length:19in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 09:41", "Ana", "derby saw entry:3"),
        ("2027-01-16 10:15", "Cy", "derby enter species:walleye length:24.5in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 10:16", "Ana", "derby saw entry:4"),
        ("2027-01-16 10:40", "Cy", "derby enter species:perch length:11.75in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 10:41", "Bo", "derby saw entry:5"),
        ("2027-01-16 11:30", "Ana", "derby enter species:walleye length:18.75in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 11:31", "Bo", "derby saw entry:6"),
        ("2027-01-16 12:10", "Sunniva", "derby enter species:perch length:12in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 12:11", "Bo", "derby saw entry:7"),
        ("2027-01-16 12:40", "Bo", "derby enter species:walleye length:19.5in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 12:41", "Cy", "derby saw entry:8"),
        ("2027-01-16 14:20", "Dee", "derby enter species:walleye length:26in water:\"Loon Basin\" fate:released"),
        ("2027-01-16 14:21", "Cy", "derby saw entry:9"),
        ("2027-01-16 14:50", "Ana", "derby enter species:pike length:29in water:\"Loon Basin\" fate:released"),
    ];

    // Fourteen people with six shelters, two children, one smoker.
    private static readonly (string Time, string Who, string Said)[] Trip =
    [
        ("2027-01-13 19:00", "Ana", "crew setup zone:America/Winnipeg water:\"Loon Basin\" at:\"49.9, -97.1\" emergency:112"),
        ("2027-01-13 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00 place:\"the north landing\" species:walleye depth:24ft"),
        ("2027-01-13 19:10", "Bo", "trip join answer:in party:3 children:2"), ("2027-01-13 19:12", "Cy", "trip join answer:in smoke:smoker"),
        ("2027-01-13 19:14", "Dee", "trip join answer:in party:2 smoke:smoke-free"), ("2027-01-13 19:15", "Eli", "trip join answer:in with:Dee"),
        ("2027-01-13 19:20", "Fay", "trip join answer:in party:2 apart:Cy"), ("2027-01-13 19:25", "Gus", "trip join answer:in"),
        ("2027-01-13 19:30", "Hal", "trip join answer:in party:3"),
        ("2027-01-14 18:00", "Ana", "trip bring item:\"large hub\""), ("2027-01-14 18:01", "Bo", "trip bring item:hub"),
        ("2027-01-14 18:02", "Cy", "trip bring item:\"two-person flip-over\""), ("2027-01-14 18:03", "Dee", "trip bring item:\"small hub\""),
        ("2027-01-14 18:04", "Gus", "trip bring item:\"one-person flip-over\""),
        ("2027-01-14 18:05", "Hal", "trip bring item:\"red barn\" as:shelter seats:5 weight:60kg"),
        ("2027-01-14 18:07", "Bo", "trip bring item:\"throw rope\" count:2"), ("2027-01-14 18:08", "Bo", "trip bring item:\"ice picks\" count:3"),
        ("2027-01-15 16:00", "Hal", "ice report water:\"Loon Basin\" spot:\"north hump\" clear:9in"),
        ("2027-01-15 16:10", "Ana", "trip seats"),
    ];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");
    private readonly CrewBook _book;
    private readonly ServiceProvider _services;
    private int _requests;

    public PlayedCrew()
    {
        _book = CrewBook.At(Path.Combine(_folder.FullName, "crew.db"));
        _services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, _book).BuildServiceProvider();
    }

    /// <summary>Pictures of what was played, by the name of their file in the gallery.</summary>
    public IReadOnlyDictionary<string, PictureData> Pictures { get; private set; } = new Dictionary<string, PictureData>();

    public async ValueTask InitializeAsync()
    {
        await PlayAsync("derby", Derby);
        await PlayAsync("trip", Trip);
        var winter = new DemoSeason().Tell(Zone);
        foreach (var water in DemoSeason.Waters)
        {
            await SayAsync("winter", winter[0].At.AddHours(-1), DemoSeason.Anglers[0], $"crew setup zone:{Zone.Id} water:\"{water}\"");
        }

        foreach (var act in winter)
        {
            await SayAsync("winter", act.At, act.Angler, act.Command);
        }

        Pictures = new Dictionary<string, PictureData>
        {
            ["derby-race"] = await DrawnAsync("derby", At("2027-01-16 15:05"), "Ana", "derby standings"),
            ["learning"] = await DrawnAsync("winter", winter[^1].At, DemoSeason.Anglers[0], "catch learn species:walleye span:all"),
            ["seating"] = await DrawnAsync("trip", At("2027-01-15 16:20"), "Ana", "trip seats"),
            ["pocket-card"] = await DrawnAsync("trip", At("2027-01-15 18:00"), "Bo", "trip pack"),
        };
    }

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        await _book.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    private async Task PlayAsync(string crew, IEnumerable<(string Time, string Who, string Said)> script)
    {
        foreach (var (time, who, said) in script)
        {
            await SayAsync(crew, At(time), who, said);
        }
    }

    // As in a chat: the button under the answer asks again, and the picture of that answer is drawn.
    private async Task<PictureData> DrawnAsync(string crew, DateTimeOffset at, string who, string said)
    {
        var button = (await SayAsync(crew, at, who, said)).Actions.Single(action => action.Kind == ActionKind.Picture);
        return (await SayAsync(crew, at, who, button.Command)).Pictures.Single().Compose!();
    }

    private async Task<Reply> SayAsync(string crew, DateTimeOffset at, string who, string said)
    {
        var typed = CommandText.Read(said, _services.GetRequiredService<CommandCatalog>()).Value!;
        var caller = new Caller(crew, who, who is "Ana" or "Ida" or "Ann" ? Role.Owner : Role.Member, CrewUnits.Customary);
        var reply = await _services.GetRequiredService<Dispatcher>().AnswerAsync(
            new CommandCall($"request-{++_requests}", at, caller, typed.Path, typed.Options), TestContext.Current.CancellationToken);
        return reply.Problem is null ? reply : throw new InvalidOperationException($"{said}: {reply.Problem}");
    }

    private static DateTimeOffset At(string local)
    {
        var time = DateTime.ParseExact(local, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        return new DateTimeOffset(time, Zone.GetUtcOffset(time));
    }
}
