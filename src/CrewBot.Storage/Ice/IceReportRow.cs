using System.Data.Common;
using System.Text.Json;
using Dapper;

namespace CrewBot.Storage.Ice;

internal sealed record IceReportRow(
    long Number, long MemberId, long WaterId, string? Spot, long? MeasuredAtMs, long FiledAtMs, string Page,
    string? ClosedReason, string? WithdrawnReason, string Filer)
{
    public static Func<DbDataReader, IceReportRow> Rows(DbDataReader reader) => reader.GetRowParser<IceReportRow>();

    public FiledIce ToFiled() => new(
        Number,
        new IceEntry(MemberId, WaterId, Instants.Read(FiledAtMs), JsonSerializer.Deserialize(Page, IceJson.Default.IcePage)!)
        {
            Spot = Spot,
            MeasuredAt = MeasuredAtMs is { } at ? Instants.Read(at) : null,
        },
        Filer)
    {
        ClosedReason = ClosedReason,
        WithdrawnReason = WithdrawnReason,
    };
}
