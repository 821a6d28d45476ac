using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Crews;

/// <summary>Answers <c>/crew setup</c>: units, time zone, waters with their rules, roles, channels.</summary>
public sealed class SetUpCrew(CrewOptions options, CrewBook book) : ICommandHandler
{
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
        CommandOption[] ofWater =
        [
            options.AlsoCalled, options.At, options.Spot, options.Lines, options.Hooks, options.Trebles, options.Barbless,
            options.Baits, options.Lead, options.Forget,
        ];
        if (ofWater.FirstOrDefault(request.Has) is { } alone && !request.Has(options.Water))
        {
            return $"{alone.Name} belongs to a water: name it with water.";
        }

        if (request.Has(options.Person) != request.Has(options.Role))
        {
            return "A person and a role go together: give both.";
        }

        if (request.Has(options.Channel) != request.Has(options.Purpose))
        {
            return "A channel and what it is for go together: give both.";
        }

        return RulesIn(request).Any() && !request.Has(options.Reference)
            ? "A rule needs its reference: where does the authority say so?"
            : null;
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

        if (request.TryGet(options.Person, out var person))
        {
            var members = new MemberRepository(session);
            var id = person.Trim('<', '@', '!', '>');
            var member = await members.FindAsync(id) ?? await members.FindOrAddAsync(id, id);
            await members.SetRoleAsync(member.Id, request.Get(options.Role));
        }

        if (request.TryGet(options.Water, out var water) && await ChangeWaterAsync(request, new WaterRepository(session), water) is { } taken)
        {
            return Reply.Refuse(taken);
        }

        return (await ShowAsync(request, session)) with { Headline = "Set up" };
    }

    private async Task<string?> ChangeWaterAsync(Request request, WaterRepository waters, string water)
    {
        var id = await waters.FindAsync(water) ?? await waters.AddAsync(water);
        foreach (var name in request.GetOr(options.AlsoCalled, []))
        {
            var owner = await waters.FindAsync(name);
            if (owner is not null && owner != id)
            {
                return $"{Quoting.Quote(name)} is another water's name already.";
            }

            if (owner is null)
            {
                await waters.AddNameAsync(id, name);
            }
        }

        if (request.TryGet(options.At, out var at))
        {
            await waters.PlaceAsync(id, at.Latitude, at.Longitude);
        }

        if (request.TryGet(options.Spot, out var spot))
        {
            await waters.AddSpotAsync(id, spot);
        }

        foreach (var (rule, value) in RulesIn(request))
        {
            await waters.SetRuleAsync(id, new WaterRule(rule, value, request.Get(options.Reference)));
        }

        foreach (var rule in request.GetOr(options.Forget, []))
        {
            await waters.RemoveRuleAsync(id, rule);
        }

        return null;
    }

    private IEnumerable<(string Rule, string Value)> RulesIn(Request request)
    {
        foreach (var (rule, option) in ((string, CommandOption<int>)[])
            [(RulesOfWater.Lines, options.Lines), (RulesOfWater.Hooks, options.Hooks), (RulesOfWater.Trebles, options.Trebles)])
        {
            if (request.TryGet(option, out var number))
            {
                yield return (rule, number.ToString(CultureInfo.InvariantCulture));
            }
        }

        if (request.TryGet(options.Barbless, out var barbless))
        {
            yield return (RulesOfWater.Barbless, barbless ? RulesOfWater.Yes : "no");
        }

        if (request.TryGet(options.Baits, out var baits))
        {
            yield return (RulesOfWater.Baits, string.Join(',', baits.Distinct()));
        }

        if (request.TryGet(options.Lead, out var allowed))
        {
            yield return (RulesOfWater.Lead, allowed ? "allowed" : RulesOfWater.Banned);
        }
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
                $"Units: {Word(settings.Units) ?? "not set, so each platform's own"}. Time zone: {settings.Zone ?? $"not set, so {request.Caller.Zone.Id}"}.",
                $"Waters: {(waters.Count == 0 ? "none yet; add one with water" : string.Join(", ", waters.Select(water => water.Name)))}.",
                .. shown.Select(WaterLine),
                .. people.Count == 0 ? [] : (string[])[$"Roles: {string.Join(", ", people.Select(member => $"{member.Name}, {Word<CrewRole>(member.Role)}"))}."],
                .. channels.Count == 0 ? [] : (string[])[$"Channels: {string.Join(", ", channels.Select(pair => $"{pair.Purpose} in {pair.Channel}"))}."],
            ],
        };
    }

    private static string WaterLine(Water water)
    {
        var known = RulesOfWater.All
            .Select(rule => (Rule: rule, Known: water.Rules.FirstOrDefault(stored => stored.Rule == rule)))
            .Select(pair => pair.Known is { } stored ? $"{pair.Rule} {stored.Value} ({stored.Reference})" : $"{pair.Rule}: check");
        var spots = water.Spots.Count > 0 ? $" Spots: {string.Join(", ", water.Spots.Select(spot => spot.Name))}." : "";
        return $"{water.Name}: {string.Join(", ", known)}.{spots}";
    }

    private static string? Word<T>(T? value)
        where T : struct, Enum =>
        value?.ToString().ToLowerInvariant();
}
