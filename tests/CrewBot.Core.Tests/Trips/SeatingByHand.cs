using CrewBot.Core.Trips.Seating;

namespace CrewBot.Core.Tests.Trips;

/// <summary>The rules of seating, written a second time and without any cleverness: tries every seating there is.</summary>
internal static class SeatingByHand
{
    /// <summary>The least cost; null when not everybody can sit.</summary>
    public static SeatingCost? Best(SeatingAsk ask)
    {
        SeatingCost? best = null;
        var at = new int[ask.People.Count];
        do
        {
            var places = ask.People.Select((person, index) => (person.Key, ask.Shelters[at[index]].Key)).ToDictionary();
            if (Breaks(ask, places) is null && Cost(ask, places) is var cost && (best is null || cost < best))
            {
                best = cost;
            }
        }
        while (Next(at, ask.Shelters.Count));

        return best;
    }

    /// <summary>The rule that a seating breaks; null when it breaks none.</summary>
    public static string? Breaks(SeatingAsk ask, IReadOnlyDictionary<string, string> places)
    {
        foreach (var shelter in ask.Shelters)
        {
            var inside = ask.People.Where(person => places[person.Key] == shelter.Key).ToList();
            if (inside.Count > shelter.Seats)
            {
                return $"{shelter.Key} is too full";
            }

            // What a child owns is its guardian's as well.
            if (inside.Count > 0 && shelter.Owner is { } owner
                && FamilyOf(ask, ask.Shelters.First(other => other.Key == places[owner]).Owner) != FamilyOf(ask, owner))
            {
                return $"{owner} sits elsewhere while {shelter.Key} is hauled";
            }
        }

        return ask.People.FirstOrDefault(person => person.Guardian is { } guardian && places[guardian] != places[person.Key]) is { } child
            ? $"{child.Key} sits alone"
            : null;
    }

    public static SeatingCost Cost(SeatingAsk ask, IReadOnlyDictionary<string, string> places) => new(
        ask.People.Count(person => person.Before is { } before && before != places[person.Key]),
        ask.Wishes.Count(wish => (places[wish.One] == places[wish.Other]) == wish.IsApart),
        ask.People.Count(person => person is { AsksSmokeFree: true, Smokes: false }
            && ask.People.Any(other => other.Smokes && places[other.Key] == places[person.Key])),
        places.Values.Distinct().Count());

    private static string? FamilyOf(SeatingAsk ask, string? person) =>
        ask.People.FirstOrDefault(other => other.Key == person)?.Guardian ?? person;

    private static bool Next(int[] at, int shelters)
    {
        for (var person = 0; person < at.Length; person++)
        {
            if (++at[person] < shelters)
            {
                return true;
            }

            at[person] = 0;
        }

        return false;
    }
}
