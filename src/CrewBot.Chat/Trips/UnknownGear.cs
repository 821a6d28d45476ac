using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Trips;

/// <summary>Answers somebody who brings what nobody knows: the nearest that is known, or theirs to add, each a button.</summary>
internal sealed class UnknownGear(TradeKnowledge knowledge, TripOptions options)
{
    private const int NearestShown = 3;
    private const int ShortestWord = 4;

    public Reply Of(TripScene scene, string name)
    {
        if (CountedIn(name) is var (count, counted))
        {
            var bring = new ReplyAction(TripWords.Count(count, counted), ActionKind.Run, "trip bring",
                With(With(TripCard.Options(scene), options.Item, counted), options.Count, $"{count}"));
            return Reply.Refuse($"How many of it goes into count: {bring.Command}") with { Actions = [bring] };
        }

        var nearest = NearestTo(name);
        var own = With(TripCard.Options(scene), options.Item, name);
        return Reply.Refuse(
            $"{Quoting.Quote(name)} is not known.{(nearest.Count > 0 ? $" Nearest: {string.Join(", ", nearest)}." : "")} Gear of your own: add as, such as item:\"{name}\" as:shelter seats:4.") with
        {
            Actions =
            [
                .. nearest.Select(kind => new ReplyAction(kind, ActionKind.Run, "trip bring", With(TripCard.Options(scene), options.Item, kind))),
                Seated(own, "My own shelter", GearFamily.Shelter),
                Seated(own, "My own vehicle", GearFamily.Vehicle),
            ],
            Choices =
            [
                ReplyChoice.Of("Other gear of my own", "trip bring", own, options.As, Enum.GetValues<GearFamily>()
                    .Except([GearFamily.Shelter, GearFamily.Vehicle])
                    .Select(family => (TripWords.Of(family).Replace('-', ' '), TripWords.Of(family)))),
            ],
        };
    }

    // Who brings an "augur" says a part of what it is called: each word of a name is one that it may be.
    private List<string> NearestTo(string name)
    {
        var called = knowledge.Gear.SelectMany(kind => WordsOf(kind).Select(word => (Word: word, kind.Name))).ToLookup(pair => pair.Word, pair => pair.Name);
        return [.. Nearest.Near(name, called.Select(word => word.Key)).SelectMany(word => called[word]).Distinct().Take(NearestShown)];
    }

    private static IEnumerable<string> WordsOf(GearKind kind) =>
        kind.Aliases.Prepend(kind.Name).SelectMany(text => text.Split(' ').Where(word => word.Length >= ShortestWord).Append(text));

    // "2 augers"
    private (int Count, string Gear)? CountedIn(string name) =>
        name.Split(' ', 2) is [var number, var thing] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
        && (knowledge.Gear.TryFind(thing, out var kind) || knowledge.Gear.TryFind(thing.TrimEnd('s'), out kind))
            ? (count, kind.Name)
            : null;

    private ReplyAction Seated(Dictionary<string, string> own, string label, GearFamily family) =>
        ReplyAction.Form(label, "trip bring", With(own, options.As, TripWords.Of(family)), options.Seats, options.Weight);

    private static Dictionary<string, string> With(IReadOnlyDictionary<string, string> given, CommandOption option, string text) =>
        new(given) { [option.Name] = text };
}
