using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Answers <c>/catch import</c>: says first what a file would add, and adds it when that is confirmed.</summary>
public sealed class ImportCatches(CatchFileOptions options, CatchOptions catchOptions, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int MostBytes = 16_000_000;

    public CommandInfo Info { get; } = new(
        "catch import", "Add fish from a CSV file: first what it would add, then with confirm", "/catch import file:catches.csv",
        [options.File, options.Confirm])
    {
        Writes = true,
        Role = Role.Steward,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var content = await request.Files.ReadAsync(request.Get(options.File), MostBytes, cancellationToken);
        if (content.Fault is { } missing)
        {
            return Reply.Refuse(missing);
        }

        var reading = CatchCsv.Read(content.Value);
        if (reading.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var table = reading.Value!;
        return request.Has(options.Confirm)
            ? await book.WriteOnceAsync(request, (session, _) => WriteAsync(request, table, session), cancellationToken)
            : await book.ReadAsync(request, async session => ImportAnswer.Tried(await PlanAsync(request, table, session), request, options.Confirm), cancellationToken);
    }

    private async Task<Reply> WriteAsync(Request request, CsvTable table, CrewSession session)
    {
        var plan = await PlanAsync(request, table, session);
        if (plan.New.Count == 0)
        {
            return Reply.Refuse(ImportAnswer.Nothing(plan));
        }

        await new Import(session).WriteAsync(plan.New.Select(row => row.Fish!));
        return ImportAnswer.Written(plan);
    }

    private async Task<ImportPlan> PlanAsync(Request request, CsvTable table, CrewSession session) => ImportPlan.Of(
        table,
        new RowReader(catchOptions, knowledge, request),
        request.Caller.Member,
        await new CatchRepository(session).AllAsync(),
        await new MemberRepository(session).AllAsync(),
        await new WaterRepository(session).AllAsync());
}
