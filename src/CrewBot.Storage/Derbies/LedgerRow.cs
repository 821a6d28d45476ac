using System.Data.Common;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using Dapper;

namespace CrewBot.Storage.Derbies;

/// <summary>An event as it lies in its table; one that entered a fish is read with the entry it made.</summary>
internal sealed record LedgerRow
{
    public static Func<DbDataReader, LedgerRow> Rows(DbDataReader reader) => reader.GetRowParser<LedgerRow>();

    public long CrewId { get; init; }

    public long Derby { get; init; }

    public long Number { get; init; }

    public string Kind { get; init; } = "";

    public long AtMs { get; init; }

    public long MemberId { get; init; }

    public long? AnglerId { get; init; }

    public long? Entry { get; init; }

    public long? LengthNm { get; init; }

    public string? LengthUnit { get; init; }

    public long? Stands { get; init; }

    public string? Words { get; init; }

    public long? CatchNumber { get; init; }

    public string? Species { get; init; }

    public long? WeightNg { get; init; }

    public string? WeightUnit { get; init; }

    public string? Water { get; init; }

    public long? Kept { get; init; }

    public long? CaughtAtMs { get; init; }

    public long? OffsetMin { get; init; }

    public string? PhotoHash { get; init; }

    private ExactLength Length => StoredUnits.LengthOf(LengthNm, LengthUnit)!.Value;

    public static LedgerRow Of(long crewId, long derby, LedgerEvent written)
    {
        var row = new LedgerRow
        {
            CrewId = crewId,
            Derby = derby,
            Number = written.Number,
            Kind = Storage.Words.Write(KindOf(written)),
            AtMs = Instants.Write(written.At),
            MemberId = written.By,
            Entry = (written as EntryEvent)?.Entry,
        };
        return written switch
        {
            Joined joined => row with { AnglerId = joined.Angler, Words = joined.Team },
            Left left => row with { AnglerId = left.Angler },
            Entered entered => row with { AnglerId = entered.Angler, Entry = entered.Entry },
            Amended amended => row with
            {
                LengthNm = amended.Measured.Nanometres,
                LengthUnit = StoredUnits.WordOf(amended.Measured),
                Words = amended.Reason,
            },
            Penalised penalised => row with
            {
                LengthNm = penalised.Penalty.Nanometres,
                LengthUnit = StoredUnits.WordOf(penalised.Penalty),
                Words = penalised.Reason,
            },
            Refused refused => row with { Words = refused.Reason },
            Disputed disputed => row with { Words = disputed.Reason },
            Ruled ruled => row with { Stands = ruled.Stands ? 1 : 0, Words = ruled.Reason },
            _ => row,
        };
    }

    public LedgerEvent ToEvent()
    {
        var (number, at, entry) = ((int)Number, Instants.Read(AtMs), (int)(Entry ?? 0));
        return Storage.Words.Read<EventKind>(Kind) switch
        {
            EventKind.Created => new Created(number, at, MemberId),
            EventKind.Joined => new Joined(number, at, MemberId, AnglerId!.Value, Words),
            EventKind.Left => new Left(number, at, MemberId, AnglerId!.Value),
            EventKind.Entered => ToEntered(number, at, entry),
            EventKind.Witnessed => new Witnessed(number, at, MemberId, entry),
            EventKind.Amended => new Amended(number, at, MemberId, entry, Length, Words),
            EventKind.Accepted => new Accepted(number, at, MemberId, entry),
            EventKind.Refused => new Refused(number, at, MemberId, entry, Words!),
            EventKind.Penalised => new Penalised(number, at, MemberId, entry, Length, Words!),
            EventKind.Withdrawn => new Withdrawn(number, at, MemberId, entry),
            EventKind.Disputed => new Disputed(number, at, MemberId, entry, Words!),
            EventKind.Ruled => new Ruled(number, at, MemberId, entry, Stands == 1, Words!),
            EventKind.Closed => new Closed(number, at, MemberId),
            _ => new Reopened(number, at, MemberId),
        };
    }

    private Entered ToEntered(int number, DateTimeOffset at, int entry) => new(number, at, MemberId, entry, AnglerId!.Value)
    {
        Catch = CatchNumber!.Value,
        Species = Species!,
        Measured = Length,
        Weight = StoredUnits.MassOf(WeightNg, WeightUnit),
        Water = Water,
        Kept = Kept is { } kept ? kept == 1 : null,
        CaughtAt = Instants.Read(CaughtAtMs!.Value).ToOffset(TimeSpan.FromMinutes(OffsetMin!.Value)),
        HasPhoto = PhotoHash is not null,
    };

    private static EventKind KindOf(LedgerEvent written) => Enum.Parse<EventKind>(written.GetType().Name);
}
