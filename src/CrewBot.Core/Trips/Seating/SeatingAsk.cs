namespace CrewBot.Core.Trips.Seating;

/// <summary>Who is to be seated in what.</summary>
/// <param name="People">Everybody who comes.</param>
/// <param name="Shelters">Every shelter that is offered.</param>
/// <param name="Wishes">Who would sit with whom.</param>
public sealed record SeatingAsk(
    IReadOnlyList<Sitter> People, IReadOnlyList<OfferedShelter> Shelters, IReadOnlyList<SeatingWish> Wishes);
