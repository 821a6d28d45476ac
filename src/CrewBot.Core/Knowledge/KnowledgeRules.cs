using CrewBot.Core.Knowledge.Checks;
using CrewBot.Core.Knowledge.Reading;

namespace CrewBot.Core.Knowledge;

/// <summary>What must hold of the knowledge as a whole.</summary>
internal static class KnowledgeRules
{
    /// <summary>Checks ranges, order and references; gives every fault, not the first.</summary>
    /// <param name="all">All records, each readable by itself.</param>
    /// <param name="fileOf">Names the file that had the last word on a record, given section and key.</param>
    public static IEnumerable<KnowledgeFault> Check(TradeKnowledge all, Func<string, string, LaidFile> fileOf)
    {
        return
        [
            .. Section("species", all.Species, record => SpeciesCheck.Misfits(record, all)),
            .. Section("presentations", all.Presentations, record => PresentationCheck.Misfits(record, all)),
            .. Section("baits", all.Baits, record => BaitCheck.Misfits(record, all)),
            .. Section("outfits", all.Outfits, record => OutfitCheck.Misfits(record, all)),
            .. Section("lines", all.Lines, LineCheck.Misfits),
            .. Section("lureMaterials", all.LureMaterials, LureMaterialCheck.Misfits),
            .. Section("knots", all.Knots, record => KnotCheck.Misfits(record, all)),
            .. Section("hardware", all.Hardware, record => HardwareCheck.Misfits(record, all)),
            .. Section("hooks", all.Hooks, record => HookCheck.Misfits(record, all)),
            .. Section("splitShot", all.SplitShot, record => SplitShotCheck.Misfits(record, all)),
            .. Section("breakSigns", all.BreakSigns, record => BreakSignCheck.Misfits(record, all)),
            .. Section("gear", all.Gear, GearCheck.Misfits),
            .. Section("needs", all.Needs, NeedCheck.Misfits),
            .. Section("waters", all.Waters, WaterCheck.Misfits),
        ];

        IEnumerable<KnowledgeFault> Section<T>(string name, RecordSet<T> records, Func<T, IEnumerable<Misfit>> check)
            where T : TradeRecord =>
            from record in records
            from misfit in RecordCheck.Misfits(record, records).Concat(check(record))
            let file = fileOf(name, record.Key)
            where misfit.Against is null || file.ByCrew || !fileOf(name, misfit.Against).ByCrew
            select new KnowledgeFault(file.Name, $"{name}/{record.Key}", misfit.Field, misfit.Remedy);
    }
}
