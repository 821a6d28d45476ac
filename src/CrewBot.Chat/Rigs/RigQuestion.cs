using CrewBot.Chat.Boxes;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>A question for a rig as a person put it, with the defaults that filled it in.</summary>
/// <param name="Ask">The whole question.</param>
/// <param name="Lines">Lines they may fish.</param>
/// <param name="Assumed">Each default, named.</param>
internal sealed record RigQuestion(RigAsk Ask, int Lines, IReadOnlyList<string> Assumed)
{
    private static readonly Temperature UnderIce = Temperature.FromDegreesCelsius(4);
    private static readonly Length UsualHole = Length.FromInches(8);
    private static readonly IReadOnlySet<string> Nothing = new HashSet<string>();

    /// <summary>Reads the planning options of a request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="options">The options.</param>
    /// <param name="box">What to plan from; null for whatever there is.</param>
    public static RigQuestion From(Request request, RigOptions options, OwnTackle? box = null)
    {
        var assumed = new List<string>();
        T Or<T>(CommandOption<T> option, T otherwise, Func<Showing, T, string> named)
        {
            if (request.TryGet(option, out var given))
            {
                return given;
            }

            assumed.Add(named(request.Show, otherwise));
            return otherwise;
        }

        var species = request.Get(options.Species);
        var rules = request.GetOr(options.Lake, null!);
        var reel = request.TryGet(options.Mainline, out var line) ? line.Choice : null;
        var ask = new RigAsk
        {
            Species = species,
            AlsoThere = request.TryGet(options.AlsoThere, out var others) ? [.. others.Where(other => other.Key != species.Key)] : [],
            Depth = Or(options.Depth, species.Depth.Usual, (show, usual) => $"{show.Depth(usual)} of water"),
            Mood = Or(options.Mood, Mood.Neutral, (_, _) => "neutral mood"),
            Size = Or(options.Size, FishSize.Typical, (_, _) => "typical fish"),
            Bait = request.GetOr(options.Bait, null!),
            Place = Or(options.Place, Place.Open, (_, _) => "open ice"),
            Air = request.TryGet(options.Air, out var air) ? air : null,
            Water = Or(options.Water, UnderIce, (show, usual) => $"{show.Degrees(usual)} water"),
            Current = Or(options.Current, Speed.Zero, (_, _) => "no current"),
            Rules = rules,
            Without = request.GetOr(options.Without, Nothing),
            Hole = box?.Hole is { } drilled
                ? Or(options.Hole, drilled, (show, wide) => $"{show.Gap(wide)} hole by your auger")
                : Or(options.Hole, UsualHole, (show, wide) => $"{show.Gap(wide)} hole"),
            Mainline = reel,
            Tackle = reel is null || box is null ? box?.Tackle : box.Tackle with { Lines = [reel] },
            Presentation = request.GetOr(options.Presentation, null!),
            Step = request.GetOr(options.Step, 0),
        };
        if (box is not null)
        {
            assumed.Add("bait, swivels and snaps at hand");
        }

        return new RigQuestion(ask, LinesAllowed(request, options, rules, assumed), assumed);
    }

    private static int LinesAllowed(Request request, RigOptions options, WaterRules? rules, List<string> assumed)
    {
        if (request.TryGet(options.Lines, out var given))
        {
            if (rules?.Lines is not { } allowed || given <= allowed)
            {
                return given;
            }

            assumed.Add($"{Counted.Of(allowed, "line")}, since {rules.Name} allows no more");
            return allowed;
        }

        if (rules?.Lines is { } known)
        {
            return known;
        }

        assumed.Add("one line");
        return 1;
    }
}
