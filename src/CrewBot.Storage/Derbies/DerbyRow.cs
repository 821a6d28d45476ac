using System.Data.Common;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Storage.Catches;
using Dapper;

namespace CrewBot.Storage.Derbies;

/// <summary>A derby as it lies in its table.</summary>
internal sealed record DerbyRow
{
    public static Func<DbDataReader, DerbyRow> Rows(DbDataReader reader) => reader.GetRowParser<DerbyRow>();

    // Names hold no line breaks.
    private const char Between = '\n';

    public long CrewId { get; init; }

    public long Number { get; init; }

    public string Name { get; init; } = "";

    public long MemberId { get; init; }

    public string? Place { get; init; }

    public string Zone { get; init; } = "";

    public long CreatedAtMs { get; init; }

    public long StartsAtMs { get; init; }

    public long EndsAtMs { get; init; }

    public long GraceMs { get; init; }

    public long ProtestMs { get; init; }

    public long StepNm { get; init; }

    public string StepUnit { get; init; } = "";

    public string Rounding { get; init; } = "";

    public string Measure { get; init; } = "";

    public string? Factors { get; init; }

    public long? Most { get; init; }

    public long? MostOfEach { get; init; }

    public string? Teams { get; init; }

    public long? BestMembers { get; init; }

    public string Ties { get; init; } = "";

    public string Ranking { get; init; } = "";

    public string Evidence { get; init; } = "";

    public long? MinimumNm { get; init; }

    public string? MinimumUnit { get; init; }

    public string Species { get; init; } = "";

    public string Waters { get; init; } = "";

    public long? Kept { get; init; }

    public long? MostEntries { get; init; }

    public long IsClosed { get; init; }

    public long HasJoined { get; init; }

    public static DerbyRow Of(long crewId, long number, Derby derby, DateTimeOffset at)
    {
        var (settings, scoring, limits) = (derby.Settings, derby.Settings.Scoring, derby.Settings.Limits);
        return new DerbyRow
        {
            CrewId = crewId,
            Number = number,
            Name = derby.Name,
            MemberId = derby.CreatedBy,
            Place = derby.Place,
            Zone = derby.Zone,
            CreatedAtMs = Instants.Write(at),
            StartsAtMs = Instants.Write(settings.Window.Starts),
            EndsAtMs = Instants.Write(settings.Window.Ends),
            GraceMs = (long)settings.Window.Grace.TotalMilliseconds,
            ProtestMs = (long)settings.ProtestTime.TotalMilliseconds,
            StepNm = settings.Grid.Step.Nanometres,
            StepUnit = StoredUnits.WordOf(settings.Grid.Step)!,
            Rounding = Words.Write(settings.Grid.Rounding),
            Measure = StoredMeasures.WordOf(scoring.Measure),
            Factors = StoredMeasures.FactorsOf(scoring.Measure),
            Most = scoring.Selection.Most,
            MostOfEach = scoring.Selection.MostOfEach,
            Teams = settings.Teams is { } teams ? teams.IsPooled ? "pooled" : "members" : null,
            BestMembers = settings.Teams?.BestMembers,
            Ties = string.Join(Between, settings.Ties.Select(Words.Write)),
            Ranking = Words.Write(settings.Ranking),
            Evidence = Words.Write(settings.Evidence),
            MinimumNm = limits.Minimum?.Nanometres,
            MinimumUnit = StoredUnits.WordOf(limits.Minimum),
            Species = string.Join(Between, limits.Species),
            Waters = string.Join(Between, limits.Waters),
            Kept = limits.Kept is { } kept ? kept ? 1 : 0 : null,
            MostEntries = limits.MostEntries,
        };
    }

    public Derby ToDerby() => new()
    {
        Number = Number,
        Name = Name,
        CreatedBy = MemberId,
        Place = Place,
        Zone = Zone,
        IsClosed = IsClosed == 1,
        HasJoined = HasJoined == 1,
        Settings = new DerbySettings
        {
            Window = new DerbyWindow(
                Instants.Read(StartsAtMs), Instants.Read(EndsAtMs), TimeSpan.FromMilliseconds(GraceMs)),
            ProtestTime = TimeSpan.FromMilliseconds(ProtestMs),
            Grid = new MeasuringGrid(StoredUnits.LengthOf(StepNm, StepUnit)!.Value, Words.Read<Rounding>(Rounding)!.Value),
            Scoring = new ScoringRule(StoredMeasures.Read(Measure, Factors), new FishSelection((int?)Most, (int?)MostOfEach)),
            Teams = Teams is null ? null : new TeamScoring(Teams == "pooled", (int?)BestMembers),
            Ties = [.. Split(Ties).Select(word => Words.Read<TieBreak>(word)!.Value)],
            Ranking = Words.Read<RankNumbers>(Ranking)!.Value,
            Evidence = Words.Read<Evidence>(Evidence)!.Value,
            Limits = new EntryLimits
            {
                Minimum = StoredUnits.LengthOf(MinimumNm, MinimumUnit),
                Species = Split(Species),
                Waters = Split(Waters),
                Kept = Kept is { } kept ? kept == 1 : null,
                MostEntries = (int?)MostEntries,
            },
        },
    };

    private static string[] Split(string list) => list.Split(Between, StringSplitOptions.RemoveEmptyEntries);
}
