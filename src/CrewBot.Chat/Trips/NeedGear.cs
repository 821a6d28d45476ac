using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip need</c>: what is missing, and takes a claim or a waiver.</summary>
public sealed class NeedGear(TripOptions options, TripDesk desk, TradeKnowledge knowledge) : ICommandHandler
{
    private static readonly string[] Claimed = ["picks", "throw-rope", "spud-bar", "first-aid", "co-alarm", "auger", "sled"];

    public CommandInfo Info { get; } = new(
        "trip need", "What the trip still needs; say what you will bring of it", "/trip need mine:auger", [options.Mine, options.Waive, options.Trip])
    {
        Writes = true,
        AlsoSaid = ["gear", "what gear", "what do we need"],
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        if (request.TryGet(options.Mine, out var mine))
        {
            return desk.ChangeAsync(request, (scene, member, _) => Task.FromResult(Claim(request, scene, member, mine)), cancellationToken);
        }

        return request.TryGet(options.Waive, out var waived)
            ? desk.ChangeAsync(request, (scene, member, _) => Task.FromResult(Waive(request, scene, member, waived)), cancellationToken)
            : desk.ReadAsync(request, scene => Show(request, scene), cancellationToken);
    }

    private Reply Show(Request request, TripScene scene)
    {
        var missing = scene.Missing.ToList();
        return new Reply
        {
            Headline = missing.Count == 0 ? $"Trip {scene.Trip.Number} needs nothing more" : $"Trip {scene.Trip.Number} still needs {TripCard.Missing(scene)}",
            Lines =
            [
                .. missing.GroupBy(need => need.Working.ToString(request.Show)).Select(same => $"{string.Join(", ", same.Select(need => need.Rule.Name))}: {same.Key}."),
                .. Without(scene),
                .. missing.Any(need => !need.Rule.IsSafety) ? (string[])[WaiveLine(missing)] : [],
            ],
            Reasons =
            [
                .. missing.Select(need => $"{need.Rule.Name}: {need.Rule.Why}"),
                .. scene.Needs.Where(need => missing.All(one => one.Rule != need.Rule)).Select(need => $"{need.Rule.Name}: {need.Working.ToString(request.Show)}."),
            ],
            Actions = [.. missing.Select(need => Mine(scene, need.Rule)), new ReplyAction("Why", ActionKind.Why, request.Path, request.Written)],
            Choices = missing.Any(need => !need.Rule.IsSafety)
                ? [ReplyChoice.Of("Go without, with my name on it", "trip need", TripCard.Options(scene), options.Waive, missing.Where(need => !need.Rule.IsSafety).Select(need => (need.Rule.Name, need.Rule.Key)))]
                : [],
        };
    }

    // Whoever has a shelter or a vehicle says which, for its seats count.
    private ReplyAction Mine(TripScene scene, NeedRule rule) => Claimed.Contains(rule.Key)
        ? new ReplyAction($"Mine: {rule.Name}", ActionKind.Run, "trip need", new Dictionary<string, string>(TripCard.Options(scene)) { [options.Mine.Name] = rule.Key })
        : new ReplyAction($"Mine: {rule.Name}", ActionKind.Run, "trip bring", TripCard.Options(scene));

    private static IEnumerable<string> Without(TripScene scene) => scene.Trip.Roster.Waivers.Count == 0 ? [] :
        [$"Going without: {string.Join(", ", scene.Trip.Roster.Waivers.Select(waiver => $"{scene.Knowledge.Needs[waiver.Need].Name} ({scene.NameOf(waiver.MemberId)} answers for it)"))}."];

    private static string WaiveLine(IEnumerable<Need> missing)
    {
        var keys = missing.Where(need => !need.Rule.IsSafety).Select(need => need.Rule.Key).ToList();
        return $"To go without, with your name on it: /trip need waive:{keys[0]}{(keys.Count > 1 ? $" (or {string.Join(", ", keys.Skip(1))})" : "")}. Safety kit can be waived by nobody.";
    }

    // Changes come one after the other: whoever is second finds the thing taken.
    private TripChange Claim(Request request, TripScene scene, CrewMember member, NeedRule rule)
    {
        var need = scene.Needs.First(need => need.Rule.Key == rule.Key);
        if (need.IsMet)
        {
            return TripChange.Refuse($"No {rule.Name} is missing: {Owners(scene, rule)}.");
        }

        if (!Claimed.Contains(rule.Key) || knowledge.Gear.FirstOrDefault(kind => kind.Family == rule.Family) is not { } first)
        {
            return TripChange.Refuse($"Say which {rule.Name} you bring, such as /trip bring item:{(rule.Family == GearFamily.Vehicle ? "car" : "hub")}.");
        }

        if (scene.PartyOf(member.Id) is not { Answer: TripAnswer.In })
        {
            return TripChange.Refuse(TripWords.NotOn(scene, request));
        }

        var kind = knowledge.Gear.TryFind(rule.Name, out var usual) && usual.Family == rule.Family ? usual
            : knowledge.Gear.FirstOrDefault(gear => gear.Family == rule.Family && gear.Aliases.Contains(rule.Key)) ?? first;
        var items = scene.Trip.Roster.Items;
        var before = items.FirstOrDefault(item => item.MemberId == member.Id && item.Kind == kind.Key)
            ?? new TripItem(items.Select(item => item.Number).DefaultIfEmpty(0).Max() + 1, member.Id, kind.Key, 0);
        var trip = scene.Trip with
        {
            Roster = scene.Trip.Roster with { Items = [.. items.Where(item => item.Number != before.Number), before with { Count = before.Count + 1 }] },
        };
        return TripChange.To(trip, changed => TripCard.Of(changed, request, $"{member.Name} brings the {rule.Name}"));
    }

    private static TripChange Waive(Request request, TripScene scene, CrewMember member, NeedRule rule)
    {
        if (rule.IsSafety)
        {
            return TripChange.Refuse($"{rule.Name} can be waived by nobody: {rule.Why}");
        }

        return scene.Needs.First(need => need.Rule.Key == rule.Key).IsMet
            ? TripChange.Refuse($"No {rule.Name} is missing: there is nothing to waive.")
            : TripChange.To(
                scene.Trip with { Roster = scene.Trip.Roster with { Waivers = [.. scene.Trip.Roster.Waivers.Where(waiver => waiver.Need != rule.Key), new TripWaiver(rule.Key, member.Id)] } },
                changed => TripCard.Of(changed, request, $"{member.Name} answers for going without: {rule.Name}"));
    }

    private static string Owners(TripScene scene, NeedRule rule)
    {
        var owners = scene.Items.Where(item => scene.GearOf(item).Family == rule.Family).Select(item => scene.NameOf(item.MemberId)).Distinct().ToList();
        return owners.Count == 0 ? "the trip asks for none" : $"{string.Join(" and ", owners)} {(owners.Count == 1 ? "has" : "have")} it";
    }
}
