namespace CrewBot.Core.Trips.Seating;

/// <summary>What must hold of an ask.</summary>
internal static class SeatingCheck
{
    /// <exception cref="ArgumentException">It does not hold.</exception>
    public static void Check(SeatingAsk ask)
    {
        var people = ask.People.Select(person => person.Key).ToHashSet();
        if (people.Count != ask.People.Count || ask.Shelters.Select(shelter => shelter.Key).Distinct().Count() != ask.Shelters.Count)
        {
            throw new ArgumentException("A person or a shelter stands there twice.", nameof(ask));
        }

        if (ask.Shelters.Any(shelter => shelter.Seats < 1))
        {
            throw new ArgumentException("A shelter has one seat at least.", nameof(ask));
        }

        var named = ask.Wishes.SelectMany(wish => new[] { wish.One, wish.Other })
            .Concat(ask.People.Select(person => person.Guardian).OfType<string>())
            .Concat(ask.Shelters.Select(shelter => shelter.Owner).OfType<string>());
        if (named.FirstOrDefault(key => !people.Contains(key)) is { } stranger)
        {
            throw new ArgumentException($"'{stranger}' does not come.", nameof(ask));
        }

        if (ask.Wishes.Any(wish => wish.One == wish.Other))
        {
            throw new ArgumentException("A wish is between two people.", nameof(ask));
        }
    }
}
