using System.Globalization;

namespace CrewBot.Core.Trips.Seating;

/// <summary>Says what stands in the way when not everybody can sit.</summary>
internal static class SeatingObstacle
{
    private const int MostSeatsTried = 12;

    /// <param name="ask">What could not be seated.</param>
    /// <param name="isProven">Was every seating ruled out?</param>
    public static string Of(SeatingAsk ask, bool isProven)
    {
        var seats = ask.Shelters.Sum(shelter => shelter.Seats);
        if (ask.Shelters.Count == 0)
        {
            return $"Nobody brings a shelter: {Count(ask.People.Count, "seat")} {(ask.People.Count == 1 ? "is" : "are")} missing.";
        }

        if (ask.People.Count > seats)
        {
            return $"{Count(ask.People.Count, "person")} and {Count(seats, "seat")}: {Count(ask.People.Count - seats, "seat")} missing.";
        }

        if (TooLarge(ask) is { } family)
        {
            return family;
        }

        return isProven ? Relaxed(ask) : "No seating was found for so many in so little room; another shelter would help.";
    }

    private static string? TooLarge(SeatingAsk ask)
    {
        var model = SeatingModel.Of(ask);
        var largest = ask.Shelters.MaxBy(shelter => shelter.Seats)!;
        var block = Array.FindIndex(model.Size, size => size > largest.Seats);
        if (block < 0)
        {
            return null;
        }

        var people = model.Members[block].Select(person => ask.People[person]).ToList();
        var guardian = people.FirstOrDefault(person => person.Guardian is null) ?? people[0];
        return $"{guardian.Name} and {Count(people.Count - 1, "child")} sit together, and the largest shelter, {largest.Name}, has {Count(largest.Seats, "seat")}.";
    }

    // The one rule or seat whose easing lets everybody sit.
    private static string Relaxed(SeatingAsk ask)
    {
        foreach (var shelter in ask.Shelters.Where(shelter => shelter.Owner is not null))
        {
            var eased = ask.Shelters.Select(other => other == shelter ? other with { Owner = null } : other);
            if (SeatingPlanner.Fits(ask with { Shelters = [.. eased] }))
            {
                var owner = ask.People.First(person => person.Key == shelter.Owner);
                return $"Everybody fits only if {owner.Name} does not sit in {shelter.Name}: {owner.Name} and who sits with them take seats that others need together.";
            }
        }

        foreach (var child in ask.People.Where(person => person.Guardian is not null))
        {
            var eased = ask.People.Select(person => person == child ? person with { Guardian = null } : person);
            if (SeatingPlanner.Fits(ask with { People = [.. eased] }))
            {
                return $"{child.Name} sits with {ask.People.First(person => person.Key == child.Guardian).Name}, and no shelter has room for both beside the others: one more seat, or a larger shelter, is missing.";
            }
        }

        var more = Enumerable.Range(1, MostSeatsTried).FirstOrDefault(extra =>
            SeatingPlanner.Fits(ask with { Shelters = [.. ask.Shelters, new OfferedShelter("\u0000", "", extra)] }));
        return more == 0
            ? "Families that sit together leave seats that nobody can use: larger shelters are missing."
            : $"Families that sit together leave seats that nobody can use: a shelter of {Count(more, "seat")} is missing.";
    }

    private static string Count(int number, string noun) => string.Create(
        CultureInfo.InvariantCulture, $"{number} {(number == 1 ? noun : noun switch { "person" => "people", "child" => "children", _ => noun + "s" })}");
}
