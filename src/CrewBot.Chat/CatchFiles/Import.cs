using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Writes the rows of a plan that are new.</summary>
internal sealed class Import(CrewSession session)
{
    private readonly CatchRepository _catches = new(session);
    private readonly WaterRepository _waters = new(session);
    private readonly MemberRepository _members = new(session);
    private readonly Dictionary<string, long> _anglers = [];
    private readonly Dictionary<(string Water, string? Spot), (long Water, long? Spot)> _places = [];

    public async Task WriteAsync(IEnumerable<FileCatch> added)
    {
        // Numbers that the file gives come first, so that the next free ones lie behind them.
        foreach (var fish in added.OrderBy(fish => fish.Number is null).ThenBy(fish => fish.Number))
        {
            var (water, spot) = fish.Water is { } name ? await PlaceAsync(name, fish.Spot) : (null, null);
            var entry = fish.Entry with { MemberId = await AnglerAsync(fish), WaterId = water, SpotId = spot };
            var number = fish.Number;
            if (number is { } given)
            {
                await _catches.AddAsync(given, entry);
            }
            else
            {
                number = await _catches.AddAsync(entry);
            }

            if (fish.VoidedAt is { } voided)
            {
                await _catches.VoidAsync(number.Value, voided);
            }
        }
    }

    private async Task<long> AnglerAsync(FileCatch fish)
    {
        var key = fish.AnglerId ?? "";
        if (!_anglers.TryGetValue(key, out var id))
        {
            // Somebody who is known keeps the name they go by.
            id = fish.AnglerId is not { } person ? await _members.FindOrAddFormerAsync()
                : (await _members.FindAsync(person) ?? await _members.FindOrAddAsync(person, fish.Angler ?? person)).Id;
            _anglers.Add(key, id);
        }

        return id;
    }

    private async Task<(long? Water, long? Spot)> PlaceAsync(string water, string? spot)
    {
        if (!_places.TryGetValue((water, spot), out var place))
        {
            var id = await _waters.FindAsync(water) ?? await _waters.AddAsync(water);
            place = (id, spot is null ? null : await _waters.FindSpotAsync(id, spot) ?? await _waters.AddSpotAsync(id, spot));
            _places.Add((water, spot), place);
        }

        return place;
    }
}
