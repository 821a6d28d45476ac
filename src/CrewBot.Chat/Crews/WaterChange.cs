using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Crews;

/// <summary>Adds a water to the crew's, or changes one: names, place, spots, and rules with their references.</summary>
internal sealed class WaterChange(CrewOptions options)
{
    /// <summary>What a request lacks to be one, in a line; null when nothing.</summary>
    public string? Missing(Request request)
    {
        CommandOption[] ofSpecies = [options.Minimum, options.Maximum, options.Limit];
        CommandOption[] ofWater =
        [
            options.AlsoCalled, options.At, options.Spot, options.Lines, options.Hooks, options.Trebles, options.Barbless,
            options.Baits, options.Lead, options.Forget, options.Species, .. ofSpecies,
        ];
        if (ofWater.FirstOrDefault(request.Has) is { } alone && !request.Has(options.Water))
        {
            return $"{alone.Name} belongs to a water: name it with water, such as water:\"Loon Basin\".";
        }

        if (ofSpecies.FirstOrDefault(request.Has) is { } kept && !request.Has(options.Species))
        {
            return $"{kept.Name} belongs to a fish: name it with species, such as species:walleye.";
        }

        if (request.GetOr(options.Forget, []).FirstOrDefault(RulesOfWater.Keeping.Contains) is { } forgotten && !request.Has(options.Species))
        {
            return $"To forget a {forgotten}, name the fish with species.";
        }

        return RulesIn(request).Any() && !request.Has(options.Reference)
            ? "A rule needs its reference, where the authority says so: add it, such as reference:\"booklet p. 12\"."
            : null;
    }

    /// <summary>Makes the change.</summary>
    /// <returns>Why it can't be made, in a line; null when it was.</returns>
    public async Task<string?> ApplyAsync(Request request, WaterRepository waters, string water)
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
            await waters.RemoveRuleAsync(
                id, RulesOfWater.Keeping.Contains(rule) ? RulesOfWater.OfSpecies(rule, request.Get(options.Species).Key) : rule);
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
                yield return (rule, Text(number));
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

        foreach (var keeping in KeepingIn(request))
        {
            yield return keeping;
        }
    }

    private IEnumerable<(string Rule, string Value)> KeepingIn(Request request)
    {
        if (!request.TryGet(options.Species, out var species))
        {
            yield break;
        }

        foreach (var (rule, option) in ((string, CommandOption<ExactLength>)[])
            [(RulesOfWater.Minimum, options.Minimum), (RulesOfWater.Maximum, options.Maximum)])
        {
            if (request.TryGet(option, out var size))
            {
                yield return (RulesOfWater.OfSpecies(rule, species.Key), KeepRule.Write(size));
            }
        }

        if (request.TryGet(options.Limit, out var limit))
        {
            yield return (RulesOfWater.OfSpecies(RulesOfWater.Limit, species.Key), Text(limit));
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
