namespace CrewBot.Core.Trips.Seating;

/// <summary>Seats people in shelters.</summary>
/// <remarks>
/// Always: everybody has a seat, a child sits with its guardian, and whose shelter comes sits in it. Then, each before the
/// next: as few as possible sit elsewhere than they were told, as many wishes as possible are met, nobody who asked for
/// smoke-free air sits with a smoker, and as few shelters as possible are hauled. Common practice of trip leaders.
/// </remarks>
public static class SeatingPlanner
{
    // Places looked at: so many for every person and shelter, so that a trip of 24 in 10 shelters is answered in a tenth of a
    // second and one of 60 in 25 in less than a second. What is not proven by then carries its bound.
    private const long EffortPerChoice = 24_000;
    private const int ChangesPerChoice = 60;

    /// <summary>The best seating there is, or the best that was found with a bound on what is possible.</summary>
    /// <param name="ask">Who is to be seated in what.</param>
    /// <returns>The seating, or in a sentence what stands in its way.</returns>
    /// <exception cref="ArgumentException">A key stands twice, or a wish or shelter names somebody who does not come.</exception>
    public static SeatingOutcome Seat(SeatingAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        SeatingCheck.Check(ask);
        var model = SeatingModel.Of(ask);
        var search = Search(model);
        return search.Best is { } best
            ? new SeatingOutcome(SeatedPlan.Of(model, best, search.Floor), null)
            : new SeatingOutcome(null, SeatingObstacle.Of(ask, search.IsComplete));
    }

    /// <summary>Is there a seating at all?</summary>
    internal static bool Fits(SeatingAsk ask) => Search(SeatingModel.Of(ask with { Wishes = [] })).Best is not null;

    private static SeatingSearch Search(SeatingModel model)
    {
        var known = model.Seats.Length == 0 || model.Size.Length == 0
            ? null
            : new SeatingImprovement(model).Run(ChangesPerChoice * model.Size.Length * model.Seats.Length);
        var search = new SeatingSearch(model, EffortPerChoice * model.Ask.People.Count * model.Seats.Length);
        search.Run(known);
        return search;
    }
}
