namespace CrewBot.Core.Trips.Seating;

/// <summary>What seating the rest costs at least.</summary>
internal static class SeatingBound
{
    public const long Impossible = long.MaxValue;

    /// <summary>
    /// Wishes that no seating meets: a circle of people tied by wishes, too many for the largest shelter, falls into
    /// parts, and each part but one gives up a wish at least; nobody has more companions than the largest shelter has seats.
    /// </summary>
    public static int HopelessWishes(SeatingModel model)
    {
        var largest = model.Seats.DefaultIfEmpty(0).Max();
        var seen = new bool[model.Size.Length];
        var hopeless = model.AlwaysUnmet;
        for (var block = 0; block < seen.Length; block++)
        {
            if (!seen[block])
            {
                hopeless += HopelessIn(CircleOf(model, block, seen), model, largest);
            }
        }

        return hopeless;
    }

    /// <summary>How many of these shelters it takes, given the largest first; <see cref="Impossible"/> when all are too few.</summary>
    public static long SheltersFor(int people, SeatingModel model, ReadOnlySpan<int> sheltersLargestFirst)
    {
        var taken = 0;
        while (people > 0)
        {
            if (taken == sheltersLargestFirst.Length)
            {
                return Impossible;
            }

            people -= model.Seats[sheltersLargestFirst[taken++]];
        }

        return taken;
    }

    private static List<int> CircleOf(SeatingModel model, int first, bool[] seen)
    {
        var circle = new List<int> { first };
        seen[first] = true;
        for (var next = 0; next < circle.Count; next++)
        {
            foreach (var (other, _) in model.Together[circle[next]])
            {
                if (!seen[other])
                {
                    seen[other] = true;
                    circle.Add(other);
                }
            }
        }

        return circle;
    }

    private static int HopelessIn(List<int> circle, SeatingModel model, int largest)
    {
        if (largest == 0)
        {
            return 0;
        }

        var parts = (circle.Sum(block => model.Size[block]) + largest - 1) / largest;
        var companions = circle.Max(block =>
            model.Together[block].Length - RoomFor(model.Together[block].Select(tie => model.Size[tie.Other]), largest - model.Size[block]));
        return Math.Max(parts - 1, companions);
    }

    private static int RoomFor(IEnumerable<int> sizes, int seats) =>
        sizes.Order().TakeWhile(size => (seats -= size) >= 0).Count();
}
