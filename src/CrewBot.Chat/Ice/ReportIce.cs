using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Trips;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice report</c>: files what was measured and tells everybody who follows the water.</summary>
public sealed class ReportIce(IceOptions options, IceShorthand shorthand, CrewBook book, TripDesk trips) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice report", "File what you measured or saw on the ice", "/ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in white:2in",
        [options.Water, options.Ask, .. options.Details])
    {
        FromAnywhere = true,
        Writes = true,
        Shorthand = shorthand,
        Word = "ice",
        OnPlainWords = SeenOnIce.AnswerTo,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => AnswerAsync(request, session, member), cancellationToken);

    /// <summary>Files one report and tells the channels that follow its water, in the transaction that is open.</summary>
    /// <returns>What was filed, or in a line why nothing was.</returns>
    internal async Task<Reading<ToldIce>> FileAsync(Request request, CrewSession session, CrewMember member)
    {
        var waters = new WaterRepository(session);
        var water = request.Get(options.Water).Name;
        var waterId = await waters.FindAsync(water) ?? await waters.AddAsync(water);
        var drafted = new IceDraft(options, request).New(member.Id, waterId);
        if (drafted.Fault is { } fault)
        {
            return new Misread(fault);
        }

        var meant = await SpotOffer.SlipAsync(session, waterId, drafted.Value!.Spot);
        var reports = new IceReportRepository(session);
        var filed = (await reports.FindAsync(await reports.AddAsync(drafted.Value)))!;
        var told = await new IceRelay(session, request, water).TellAsync(filed);
        await trips.IceChangedAsync(request, session, filed.Entry.WaterId);
        return new ToldIce(filed, water, told, meant);
    }

    private async Task<Reply> AnswerAsync(Request request, CrewSession session, CrewMember member)
    {
        var filing = await FileAsync(request, session, member);
        return filing.Fault is { } fault ? Reply.Refuse(fault) : AnswerOf(request, filing.Value!);
    }

    private static Reply AnswerOf(Request request, ToldIce ice)
    {
        var (filed, water, told, meant) = ice;
        var report = filed.ToReport();
        var slip = meant is null ? null : new ReplyAction(
            $"Meant {meant}", ActionKind.Run, "ice correct",
            new Dictionary<string, string> { ["report"] = $"{filed.Number}", ["spot"] = meant, ["reason"] = "misspelt" });
        string?[] lines =
        [
            $"{IceSheet.Found(filed, water, request.Units)}.",
            IceSheet.CountsAs(filed, water, request.Units),
            IceSheet.Beside(filed, request),
            $"By {IceSheet.Source(filed)}; {IceSheet.Age(filed, request.At)}.",
            report.IsBadNews ? "It stands as bad news there until a steward closes it with a new measurement." : null,
            report.Holes.Count == 0 ? null : IceSheet.WhyNoFigure(filed, water),
            slip is null ? null : $"{Quoting.Quote(filed.Entry.Spot!)} is a new spot on {water}. If you meant {meant}: {CommandLine.Write(slip.Path, slip.Options)}",
            told > 0 ? $"Told to {Counted.Of(told, "channel")}." : "No channel follows this water yet: /ice follow.",
            .. Understanding.Of(request, []),
        ];
        return new Reply
        {
            Headline = $"Ice report #{filed.Number}: {water}{(filed.Entry.Spot is { } spot ? $", {spot}" : "")}",
            Lines = [.. lines.Where(line => line is not null).Select(line => line!)],
            Figures =
            [
                IceFigures.Report.Of(filed.Number), IceFigures.Told.Of(told),
                .. IceSheet.IsNumbered(filed, water) ? (Figure[])[IceFigures.Effective.Of(IceSheet.LeastOf(report))] : [],
            ],
            Cautions = IceCautions.Of(report.IsBadNews),
            Reasons = ["White ice, and ice that nobody named, counts by half (US Army TM 5-852-1 and Minnesota DNR, undated). Grey, candled, slushy, layered or refrozen ice counts as none."],
            Actions = [.. slip is null ? (ReplyAction[])[] : [slip], .. ReplyAction.WhyAndShare(request)],
        };
    }
}
