using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Crews;
using UnitsNet;

namespace CrewBot.Chat.Boxes;

/// <summary>Reads what the caller's box holds to tie rigs from.</summary>
public sealed class TackleDesk(TradeKnowledge knowledge, CrewBook book)
{
    /// <summary>What the caller can tie rigs from. What the trade no longer knows is left out.</summary>
    /// <exception cref="Storage.StorageException">The database can't be used.</exception>
    internal async Task<OwnTackle> OfAsync(Request request, CancellationToken cancellationToken)
    {
        var owned = await book.ReadAsync(
            request,
            async session => await new MemberRepository(session).FindAsync(request.Caller.Member) is { } member
                ? await new BoxRepository(session).OfAsync(member.Id)
                : [],
            cancellationToken);
        var things = owned.Select(thing => thing.Gear).ToList();
        var tackle = new Tackle
        {
            Lines = [.. LinesOf(things, BoxKind.Line)],
            Leaders = [.. LinesOf(things, BoxKind.Leader)],
            Lures = [.. LuresOf(things)],
            Hooks = [.. things.Where(gear => gear.Kind == BoxKind.Hook && Knows(knowledge.Hooks, gear)).Select(gear => knowledge.Hooks[gear.Record!].Size)],
        };
        var holes = things.Where(gear => gear.Kind == BoxKind.Auger).Select(gear => gear.Width?.Length).OfType<Length>().ToList();
        return new OwnTackle(tackle, holes.Count > 0 ? holes.MaxBy(hole => hole.Meters) : null);
    }

    private IEnumerable<LineChoice> LinesOf(IEnumerable<Gear> things, BoxKind kind) => things
        .Where(gear => gear.Kind == kind && gear.Mass is not null && Knows(knowledge.Lines, gear))
        .Select(gear => new LineChoice(knowledge.Lines[gear.Record!], TestMass.ToForce(gear.Mass!.Value)))
        .Where(line => line.Material.Table.Covers(line.Test));

    private IEnumerable<Lure> LuresOf(IEnumerable<Gear> things) => things
        .Where(gear => gear.Kind == BoxKind.Lure && gear.Mass is not null && Knows(knowledge.Presentations, gear)
            && gear.Material is { } material && knowledge.LureMaterials.Has(material))
        .Select(gear => new Lure(knowledge.Presentations[gear.Record!], gear.Mass!.Value.Mass, knowledge.LureMaterials[gear.Material!]));

    private static bool Knows<T>(RecordSet<T> records, Gear gear)
        where T : TradeRecord => gear.Record is { } key && records.Has(key);
}
