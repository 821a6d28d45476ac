using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Asks of a fish whether it may be entered.</summary>
internal sealed class EntryCheck(Derby derby, TradeKnowledge knowledge)
{
    private readonly DerbyWords _words = new(derby, knowledge);

    /// <summary>Why a fish of the log can't be entered, in a line; null when it can.</summary>
    public string? FaultOf(LoggedCatch caught, DateTimeOffset at)
    {
        var (entry, settings) = (caught.Entry, derby.Settings);
        var (limits, window) = (settings.Limits, settings.Window);
        var name = CatchWords.NameOf(entry.Species, knowledge);
        return caught.IsVoid ? $"#{caught.Number} is void in the log."
            : derby.IsClosed ? $"{derby.Name} is closed: ask a steward to reopen it."
            : at < window.Starts ? $"{derby.Name} starts at {_words.Time(window.Starts, at)}: only fish from then on count."
            : !window.Holds(entry.CaughtAt) ? $"Caught at {_words.Time(entry.CaughtAt, at)}, but {derby.Name} counts from {_words.Time(window.Starts, at)} to {_words.Time(window.Ends, at)}."
            : limits.Species.Count > 0 && !limits.Species.Contains(entry.Species) ? $"A {name} does not count in {derby.Name}: only {string.Join(", ", limits.Species.Select(key => CatchWords.NameOf(key, knowledge)))}."
            : limits.Waters.Count > 0 && (caught.Water is not { } water || !limits.Waters.Contains(water)) ? $"{caught.Water ?? "No water"} does not count in {derby.Name}: only {string.Join(", ", limits.Waters)}. /catch edit catch:{caught.Number} corrects the water."
            : limits.Kept is { } kept && entry.Kept != kept ? $"Only {(kept ? "kept" : "released")} fish count in {derby.Name}. /catch edit catch:{caught.Number} says which it was."
            : entry.Length is not { } length ? $"#{caught.Number} has no length: give it with /catch edit catch:{caught.Number} length:22.5in"
            : limits.Minimum is { } least && settings.Grid.Score(length).Nanometres < least.Nanometres ? $"{_words.Length(settings.Grid.Score(length))} is under the minimum of {_words.Length(least)} in {derby.Name}."
            : null;
    }

    /// <summary>The button that offers a fish just logged to the derby its angler is in; none where it does not qualify.</summary>
    public static async Task<IReadOnlyList<ReplyAction>> OffersAsync(
        Request request, Storage.Connections.CrewSession session, LoggedCatch caught, TradeKnowledge knowledge) =>
    [
        .. (await new DerbyRepository(session).RunningAsync(request.At, caught.Entry.MemberId))
            .Where(derby => derby.HasJoined && DerbyFinder.IsOn(derby, request.At) && new EntryCheck(derby, knowledge).FaultOf(caught, request.At) is null)
            .Select(derby => DerbyActions.Enter(derby, caught.Number))
            .Take(2),
    ];
}
