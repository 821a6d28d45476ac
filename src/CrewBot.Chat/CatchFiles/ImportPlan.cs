using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.CatchFiles;

/// <summary>What an import would do: decided without writing anything.</summary>
internal sealed record ImportPlan(IReadOnlyList<RowFate> Rows, IReadOnlyList<string> Ignored, IReadOnlyList<string> NewPlaces, IReadOnlyList<string> NewAnglers)
{
    public IReadOnlyList<RowFate> New { get; } = [.. Rows.Where(row => row.IsNew)];

    public IReadOnlyList<RowFate> Refused { get; } = [.. Rows.Where(row => row.Refusal is not null)];

    public IReadOnlyList<RowFate> Odd { get; } = [.. Rows.Where(row => row is { IsNew: true, Oddity: not null })];

    public int Known { get; } = Rows.Count(row => row.IsKnown);

    /// <summary>Decides about every row.</summary>
    /// <param name="table">The file.</param>
    /// <param name="reader">Reads its rows.</param>
    /// <param name="importer">Whose fish are those that name nobody, by the platform's id.</param>
    /// <param name="log">What the crew has logged.</param>
    /// <param name="people">The people of the crew.</param>
    /// <param name="waters">The waters of the crew.</param>
    public static ImportPlan Of(
        CsvTable table, RowReader reader, string importer, IReadOnlyList<LoggedCatch> log, IReadOnlyList<CrewMember> people, IReadOnlyList<Water> waters)
    {
        var known = new KnownFish(importer, log, people, waters);
        var rows = new List<RowFate>(table.Rows.Count);
        foreach (var row in table.Rows)
        {
            var reading = reader.Read(row);
            rows.Add(reading.Fault is { } fault
                ? RowFate.Refused(row.Line, fault)
                : known.FateOf(row.Line, reading.Value!) with { Oddity = reader.OddityOf(reading.Value!) });
        }

        var added = rows.Where(row => row.IsNew).Select(row => row.Fish!).ToList();
        return new ImportPlan(rows, table.Ignored, [.. PlacesIn(added, waters)], [.. AnglersIn(added.Where(fish => fish.AnglerId != importer), people)]);
    }

    private static IEnumerable<string> PlacesIn(List<FileCatch> added, IReadOnlyList<Water> waters)
    {
        bool Has(FileCatch fish) => waters.Any(water => Answers(water.Names, fish.Water!)
            && (fish.Spot is null || Answers(water.Spots.Select(spot => spot.Name), fish.Spot)));
        return added
            .Where(fish => fish.Water is not null && !Has(fish))
            .Select(fish => fish.Spot is null ? fish.Water! : $"{fish.Water}, {fish.Spot}")
            .DistinctBy(RecordSet.Plain);
    }

    private static IEnumerable<string> AnglersIn(IEnumerable<FileCatch> added, IReadOnlyList<CrewMember> people) => added
        .Where(fish => fish.AnglerId is { } id && !people.Any(person => person.PlatformId == id))
        .Select(fish => fish.Angler ?? fish.AnglerId!)
        .Distinct();

    private static bool Answers(IEnumerable<string> names, string name) =>
        names.Any(known => RecordSet.Plain(known) == RecordSet.Plain(name));
}
