using CrewBot.Core.Trips.Seating;

namespace CrewBot.Core.Tests.Trips;

/// <summary>Invented trips, the same for the same seed.</summary>
internal static class SeatingCases
{
    /// <summary>A trip of that size: families, owners, smokers, wishes of both kinds.</summary>
    public static SeatingAsk Random(int seed, int people, int shelters, int wishes, int mostSeats)
    {
        var random = new Random(seed);
        var guardians = Enumerable.Range(0, people).Where(_ => random.Next(5) != 0).DefaultIfEmpty(0).ToList();
        var sitters = Enumerable.Range(0, people).Select(person => new Sitter($"p{person}", $"P{person}")
        {
            Guardian = guardians.Contains(person) ? null : $"p{guardians[random.Next(guardians.Count)]}",
            Smokes = guardians.Contains(person) && random.Next(8) == 0,
            AsksSmokeFree = random.Next(3) == 0,
        }).ToList();
        var offered = Enumerable.Range(0, shelters).Select(shelter => new OfferedShelter(
            $"s{shelter}", $"S{shelter}", random.Next(1, mostSeats + 1), random.Next(4) == 0 ? null : $"p{random.Next(people)}")).ToList();
        var asked = Enumerable.Range(0, people < 2 ? 0 : wishes).Select(_ =>
        {
            var one = random.Next(people);
            var other = (one + random.Next(1, people)) % people;
            return new SeatingWish($"p{one}", $"p{other}", random.Next(3) == 0);
        }).ToList();
        return new SeatingAsk(sitters, offered, asked);
    }

    /// <summary>The trip when one person stays at home, with the shelter that is theirs; the others remember what they were told.</summary>
    public static SeatingAsk Without(SeatingAsk ask, Sitter gone, SeatingPlan told)
    {
        var leaving = ask.People.Where(person => person == gone || person.Guardian == gone.Key).Select(person => person.Key).ToHashSet();
        return new SeatingAsk(
            [.. ask.People.Where(person => !leaving.Contains(person.Key)).Select(person => person with { Before = told.Places[person.Key] })],
            [.. ask.Shelters.Where(shelter => shelter.Owner is null || !leaving.Contains(shelter.Owner))],
            [.. ask.Wishes.Where(wish => !leaving.Contains(wish.One) && !leaving.Contains(wish.Other))]);
    }
}
