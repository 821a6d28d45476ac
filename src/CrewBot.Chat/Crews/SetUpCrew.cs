using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Crews;

/// <summary>Answers <c>/crew setup</c>: units, time zone, waters with their rules, roles, channels.</summary>
public sealed class SetUpCrew(CrewOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private readonly WaterChange _waters = new(options);

    public CommandInfo Info { get; } = new(
        "crew setup", "What the crew has set, and how to set it",
        "/crew setup water:\"Loon Basin\" lines:2 lead:banned reference:\"booklet p. 12\"", options.All)
    {
        Writes = true,
        Role = Role.Owner,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        if (Missing(request) is { } missing)
        {
            return Reply.Refuse(missing);
        }

        return request.Written.Count == 0
            ? await book.ReadAsync(request, session => ShowAsync(request, session), cancellationToken)
            : await book.WriteOnceAsync(request, (session, _) => ChangeAsync(request, session), cancellationToken);
    }

    private string? Missing(Request request)
    {
        if (request.Has(options.Person) != request.Has(options.Role))
        {
            return "A person and a role go together: give both.";
        }

        return request.Has(options.Channel) != request.Has(options.Purpose)
            ? "A channel and what it is for go together: give both."
            : _waters.Missing(request);
    }

    private async Task<Reply> ChangeAsync(Request request, CrewSession session)
    {
        var crew = new CrewRepository(session);
        if (request.TryGet(options.Units, out var units))
        {
            await crew.SetUnitsAsync(units);
        }

        if (request.TryGet(options.Zone, out var zone))
        {
            await crew.SetZoneAsync(zone.Id);
        }

        if (request.TryGet(options.Channel, out var channel))
        {
            await crew.SetChannelAsync(request.Get(options.Purpose), channel);
        }

        if (request.TryGet(options.ContactRole, out var contacts))
        {
            await crew.SetContactRoleAsync(contacts);
        }

        if (request.TryGet(options.Emergency, out var number))
        {
            await crew.SetEmergencyAsync(number);
        }

        if (request.TryGet(options.Person, out var person) && await GiveRoleAsync(person, request.Get(options.Role), session) is { } unclear)
        {
            return Reply.Refuse(unclear);
        }

        if (request.TryGet(options.Water, out var water) && await _waters.ApplyAsync(request, new WaterRepository(session), water) is { } taken)
        {
            return Reply.Refuse(taken);
        }

        return (await ShowAsync(request, session)) with { Headline = "Set up" };
    }

    // Whom the platform points at is there before they have said anything; a name that nobody bears is a slip.
    private async Task<string?> GiveRoleAsync(Person person, CrewRole role, CrewSession session)
    {
        var members = new MemberRepository(session);
        var crew = await members.AllAsync();
        var fitting = PersonMeant.Fitting(person.Id, crew);
        if (fitting.Count > 1)
        {
            return PersonMeant.Which(options.Person, person.Id, fitting);
        }

        if (fitting.Count == 0 && !person.IsMentioned)
        {
            return $"Nobody in this crew is called {Quoting.Quote(person.Id)}. There is {Listing.Of([.. crew.Select(one => one.Name)])}; whoever is new logs or joins something first.";
        }

        var member = fitting.Count > 0 ? fitting[0] : await members.FindOrAddAsync(person.Id, person.Id);
        await members.SetRoleAsync(member.Id, role);
        return null;
    }

    private async Task<Reply> ShowAsync(Request request, CrewSession session)
    {
        var settings = await new CrewRepository(session).FindAsync();
        var channels = await new CrewRepository(session).ChannelsAsync();
        var waters = await new WaterRepository(session).AllAsync();
        var shown = request.TryGet(options.Water, out var named)
            ? waters.Where(water => water.Names.Any(name => RecordSet.Plain(name) == RecordSet.Plain(named))).ToList()
            : [];
        var people = (await new MemberRepository(session).AllAsync()).Where(member => member.Role != CrewRole.Member).ToList();
        return new Reply
        {
            Headline = "What this crew has set",
            Lines =
            [
                $"Units: {Word(settings.Units) ?? "not set, so each platform's own"}. Time zone: {settings.Zone ?? $"not set, so {request.Caller.Zone.Id}; /crew setup zone:America/Winnipeg sets one"}.",
                $"Waters: {(waters.Count == 0 ? "none yet; /crew setup water:\"Loon Basin\" adds one" : string.Join(", ", waters.Select(water => water.Name)))}.",
                .. shown.SelectMany(water => WaterWords.Lines(water, knowledge)),
                .. people.Count == 0 ? [] : (string[])[$"Roles: {string.Join(", ", people.Select(member => $"{member.Name} ({Word<CrewRole>(member.Role)})"))}."],
                .. channels.Count == 0 ? [] : (string[])[$"Channels: {string.Join(", ", channels.Select(pair => $"{pair.Purpose} in {pair.Channel}"))}."],
                .. settings.ContactRole is null && settings.Emergency is null ? [] : (string[])[$"When a party is overdue: call role {settings.ContactRole ?? "not set"}. Emergency number: {settings.Emergency ?? "not set"}."],
            ],
        };
    }

    private static string? Word<T>(T? value)
        where T : struct, Enum =>
        value?.ToString().ToLowerInvariant();
}
