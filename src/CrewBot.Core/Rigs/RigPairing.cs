using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Plans lines that work together: one that calls fish in, one beside it that they eat, set lines farther out.</summary>
/// <param name="knowledge">What the trade knows.</param>
/// <param name="planner">Plans each line.</param>
public sealed class RigPairing(TradeKnowledge knowledge, RigPlanner planner)
{
    // Near enough to watch both on one sonar, far enough that a fish on one does not take the other along.
    private static readonly Length BesideEachOther = Length.FromFeet(5);
    private static readonly Length SetLineAway = Length.FromFeet(25);

    /// <summary>Plans.</summary>
    /// <param name="ask">What is asked; a presentation in it is ignored.</param>
    /// <param name="lines">Lines that are allowed, 1 or more.</param>
    /// <returns>Null when not even one line can be planned; ask the planner why.</returns>
    /// <remarks>Spacing: common practice.</remarks>
    public RigPair? Plan(RigAsk ask, int lines)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lines, 1);
        var open = ask with { Presentation = null, Step = 0 };
        if (lines == 1)
        {
            return planner.Plan(open).Plan is { } single
                ? new RigPair(single.First, null, [], BesideEachOther, SetLineAway)
                : null;
        }

        var known = ask.Species.Presentations[ask.Mood].Select(key => knowledge.Presentations[key]).ToList();
        var caller = FirstPlanned(open, known.Where(presentation => presentation.Loudness > 0).OrderByDescending(presentation => presentation.Loudness))
            ?? planner.Plan(open).Plan?.First;
        if (caller is null)
        {
            return null;
        }

        var sitter = FirstPlanned(open, Passive(ask, known).Where(presentation => presentation.Key != caller.Presentation.Key));
        var set = lines > 2 ? FirstPlanned(open, SetPresentations(ask)) : null;
        return new RigPair(
            caller,
            sitter,
            set is null ? [] : [.. Enumerable.Repeat(set, lines - 2)],
            sitter is { Presentation.SetLine: true } ? SetLineAway : BesideEachOther,
            SetLineAway);
    }

    /// <summary>What a sitter can fish, most passive first: what suits the mood, then whatever bait fishing the class has.</summary>
    private IEnumerable<Presentation> Passive(RigAsk ask, List<Presentation> known) => known
        .Concat(knowledge.Presentations.Where(presentation => IsPassive(presentation) && Serves(ask, presentation)))
        .Where(IsPassive)
        .OrderBy(presentation => presentation.SetLine ? 0 : presentation.Step)
        .DistinctBy(presentation => presentation.Key);

    private IEnumerable<Presentation> SetPresentations(RigAsk ask) => knowledge.Presentations
        .Where(presentation => (presentation.SetLine || presentation.Step == 1) && Serves(ask, presentation))
        .OrderBy(presentation => presentation.SetLine ? 0 : 1);

    private static bool IsPassive(Presentation presentation) => presentation.SetLine || presentation.Step <= 2;

    private static bool Serves(RigAsk ask, Presentation presentation) =>
        presentation.StartWeight.ContainsKey(ask.Species.Class) && presentation.Work.ContainsKey(ask.Mood);

    private Rig? FirstPlanned(RigAsk ask, IEnumerable<Presentation> presentations) => presentations
        .Select(presentation => planner.Plan(ask with { Presentation = presentation }).Plan?.First)
        .FirstOrDefault(rig => rig is not null);
}
