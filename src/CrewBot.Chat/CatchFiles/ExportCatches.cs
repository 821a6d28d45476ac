using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Answers <c>/catch export</c>: the whole log as a file.</summary>
public sealed class ExportCatches(CatchFileOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "catch export", "The crew's whole log as a file, exact and in each angler's own units", "/catch export format:csv", [options.AsJson]);

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var log = await book.ReadAsync(request, session => new CatchRepository(session).AllAsync(), cancellationToken);
        if (log.Count == 0)
        {
            return Reply.Refuse("Nothing is logged yet. Log a fish with /catch log species:walleye length:22.5in");
        }

        var fish = log.Select(FileCatch.Of);
        var day = TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var file = request.GetOr(options.AsJson, otherwise: false)
            ? new ReplyFile($"catches-{day}.json", "application/json", CatchJson.Write(fish))
            : new ReplyFile($"catches-{day}.csv", "text/csv", CatchCsv.Write(fish));
        var voided = log.Count(logged => logged.IsVoid);
        return new Reply
        {
            Headline = $"The crew's log: {Counted.Of(log.Count, "entry", "entries")}{(voided > 0 ? $", {voided} of them void" : "")}",
            Lines = ["It names people and spots: keep it within the crew."],
            Figures = [CatchFigures.Count.Of(log.Count)],
            Reasons = ["Void entries say since when; what an entry said before it was edited stays in the crew's database alone."],
            Files = [file],
        };
    }
}
