namespace CrewBot.Core.Trips.Seating;

/// <summary>Writes blocks in shelters out as people in shelters.</summary>
internal static class SeatedPlan
{
    public static SeatingPlan Of(SeatingModel model, int[] at, long floor)
    {
        var ask = model.Ask;
        var seated = SeatedBlocks.Of(model, at);
        var places = new Dictionary<string, string>();
        var inSmoke = new List<string>();
        for (var person = 0; person < ask.People.Count; person++)
        {
            var shelter = at[model.BlockOf[person]];
            var sitter = ask.People[person];
            places[sitter.Key] = ask.Shelters[shelter].Key;
            if (sitter is { AsksSmokeFree: true, Smokes: false } && seated.IsSmoky(shelter))
            {
                inSmoke.Add(sitter.Key);
            }
        }

        return new SeatingPlan(places, model.CostOf(seated.Cost()), model.CostOf(floor))
        {
            Unmet = [.. ask.Wishes.Where(wish => (places[wish.One] == places[wish.Other]) == wish.IsApart)],
            InSmoke = inSmoke,
            Moved = [.. ask.People.Where(sitter => sitter.Before is { } before && places[sitter.Key] != before).Select(sitter => sitter.Key)],
            Hauled = [.. ask.Shelters.Select(shelter => shelter.Key).Where(places.ContainsValue)],
        };
    }
}
