using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Ice.Posts;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>
/// Answers <c>/ice relay</c>: shows what was read out of somebody's post, and files it once a person has seen it, as one
/// <c>/ice report</c> for each place.
/// </summary>
public sealed class RelayIcePost(IceOptions options, ReportIce report, CrewBook book) : ICommandHandler
{
    private const int MostLines = 6;

    private static readonly TimeSpan PassedOnWithin = TimeSpan.FromDays(3);

    public CommandInfo Info { get; } = new(
        "ice relay", "Pass on what somebody wrote about the ice, once you have seen what was read out of it",
        "/ice relay author:Nils post:\"4-5 inches of good ice off the landing, slush by the narrows\"",
        [options.Post, options.WaterSaid, options.Found, options.WhenSaid, options.Author, options.Written, options.Link, options.Quote])
    {
        Writes = true,
        OnMessage = new("Relay ice post")
        {
            Text = options.Post,
            Author = options.Author,
            SentAt = options.Written,
            Link = options.Link,
            OpensForm = true,
        },
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        FaultOf(request) is { } fault ? Reply.Refuse(fault)
        : request.Has(options.Found) ? await book.WriteOnceAsync(request, (session, member) => FileAsync(request, session, member), cancellationToken)
        : Show(request);

    private string? FaultOf(Request request) =>
        !request.Has(options.Post) && !request.Has(options.Found) ? "There is no text in that post. Give post:\"5 inches off the landing\"."
        : !request.Has(options.Author) ? "A post that is passed on has somebody who wrote it: give author:\"name\"."
        : null;

    private Reply Show(Request request)
    {
        var (text, author) = (request.Get(options.Post), request.Get(options.Author));
        var written = request.TryGet(options.Written, out var sent) ? sent.From(request.At, request.Caller.Zone) : TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone);
        var post = IcePostReader.Read(text, written, [.. request.Caller.Waters.SelectMany(water => water.Aliases.Prepend(water.Name))]);
        var told = PostedIce.Of(post, text, request.Caller.Waters);
        if (told.Lines.Count == 0)
        {
            return Reply.Refuse(post.IsContradictory
                ? $"That post says less ice in all than in its parts: ask {author} what was measured."
                : "Nothing to pass on in that post: it tells of no thickness or hazard that is there now.");
        }

        return told.Text.Length > options.Found.MostCharacters
            ? Reply.Refuse($"That post tells of {told.Lines.Count} places, more than one form holds: pass them on one by one with /ice report.")
            : CardOf(request, post, told);
    }

    private Reply CardOf(Request request, IcePost post, PostedIce told)
    {
        var known = KnownOf(request, post, told);
        string?[] lines =
        [
            .. told.Lines.Take(MostLines - 1).Select(line => $"{line}."),
            told.Lines.Count >= MostLines ? $"{string.Join("; ", told.Lines.Skip(MostLines - 1))}." : null,
            post.IsContradictory ? "Its thicknesses contradict each other and are left out." : null,
            $"Water: {(told.Water ?? (request.TryGet(options.WaterSaid, out var water) ? water.Name : "not said"))}. Measured: {(post.Time is { } time ? Since(time) : "not said when")}.",
        ];
        return new Reply
        {
            Headline = $"Read out of {request.Get(options.Author)}'s post; nothing is filed yet",
            Lines = [.. lines.OfType<string>()],
            Cautions = IceCautions.Of(post.Hazards.Count > 0),
            Reasons =
            [
                "Of a range the lower end counts, of several thicknesses at one place the one that carries least. A guess and somebody else's word are marked and support no answer. What the post does not say stays unknown.",
            ],
            Actions =
            [
                ReplyAction.Form("Correct and file", Info.Path, known, options.WaterSaid, options.Found, options.WhenSaid),
                .. known.ContainsKey(options.WaterSaid.Name) && post.UnitMissing.Count == 0 ? [new ReplyAction("File as read", ActionKind.Run, Info.Path, known)] : (ReplyAction[])[],
            ],
        };
    }

    private Dictionary<string, string> KnownOf(Request request, IcePost post, PostedIce told)
    {
        var known = request.Written.Where(option => option.Key != options.Post.Name).ToDictionary();
        known.TryAdd(options.Quote.Name, PostedIce.Shortened(request.Get(options.Post), IceOptions.LongestQuote));
        known[options.Found.Name] = told.Text;
        if (told.Water is { } water)
        {
            known.TryAdd(options.WaterSaid.Name, water);
        }

        if (post.Time is { } time)
        {
            known.TryAdd(options.WhenSaid.Name, $"{time.At:yyyy-MM-dd HH:mm}");
        }

        return known;
    }

    private static string Since(PostedTime time) => time.IsExact ? $"{time.At:yyyy-MM-dd HH:mm}" : $"{time.At:yyyy-MM-dd}, from {time.At:HH:mm} on";

    private async Task<Reply> FileAsync(Request request, CrewSession session, CrewMember member)
    {
        var parts = PostedIce.Split(request.Get(options.Found), request.Caller.Waters);
        if (parts.Count == 0)
        {
            return Reply.Refuse($"{options.Found.Name} is empty. Give {options.Found.Accepts}.");
        }

        var filed = new List<ToldIce>(parts.Count);
        foreach (var part in parts)
        {
            var asked = ReportOf(request, part);
            var told = asked.Fault is { } unread ? new Misread(unread)
                : await BeforeAsync(asked.Value!, session, filed) is { } before ? new Misread($"That post is passed on already, as report #{before}: correct it with /ice correct report:{before}.")
                : await report.FileAsync(asked.Value!, session, member);
            if (told.Fault is { } fault)
            {
                return Reply.Refuse(fault);
            }

            filed.Add(told.Value!);
        }

        return AnswerOf(request, filed);
    }

    // Each place is asked as a report of its own, in the words of its shorthand: what those don't place is not filed.
    private Reading<Request> ReportOf(Request request, (string? Water, string? Spot, string Words) part)
    {
        var said = request.Written.Where(option => option.Key != options.Found.Name && option.Key != options.Post.Name).ToDictionary();
        said[options.Ask.Name] = part.Words;
        if (part.Water is { } water)
        {
            said[options.Water.Name] = water;
        }

        if (part.Spot is { } spot)
        {
            said[options.Spot.Name] = spot;
        }

        var reading = RequestReading.Read(
            new CommandCall(request.Id, request.At, request.Caller, report.Info.Path, said) { Place = request.Place }, report.Info);
        return reading is { Fault: null, Value.Expansion.NotUnderstood: [var first, ..] }
            ? new Misread($"found: {Quoting.Quote(first)} is not understood. Give {options.Found.Accepts}.")
            : reading;
    }

    // Two members may point at one post; its channels are to hear of it once.
    private async Task<long?> BeforeAsync(Request asked, CrewSession session, List<ToldIce> now) =>
        asked.TryGet(options.Link, out var link)
        && await new WaterRepository(session).FindAsync(asked.Get(options.Water).Name) is { } water
            ? (await new IceReportRepository(session).SinceAsync(water, asked.At - PassedOnWithin))
                .FirstOrDefault(filed => filed.Entry.Page.Quote?.Link == link && now.All(ice => ice.Filed.Number != filed.Number))?.Number
            : null;

    private static Reply AnswerOf(Request request, List<ToldIce> filed)
    {
        var lines = filed.Select(ice =>
            $"#{ice.Filed.Number} {ice.Water}, {ice.Filed.Entry.Spot ?? "no spot named"}: {IceSheet.Found(ice.Filed, ice.Water, request.Units)}{(ice.Filed.Entry.Page.IsHearsay ? " (not measured)" : "")}.").ToList();
        var last = filed[^1].Filed;
        var channels = filed.Max(ice => ice.Channels);
        return new Reply
        {
            Headline = $"Passed on from {last.MeasuredBy}'s post: {Counted.Of(filed.Count, "report")}",
            Lines =
            [
                .. lines.Take(MostLines - 1),
                .. lines.Count >= MostLines ? [string.Join(" ", lines.Skip(MostLines - 1))] : (string[])[],
                last.Entry.MeasuredAt is null ? "Nobody said when it was measured, so it supports no answer." : $"{(last.Entry.Page.IsHearsay ? "So it was" : "Measured")} {IceSheet.Age(last, request.At)}.",
                channels > 0 ? $"Told to {Counted.Of(channels, "channel")}." : "No channel follows this water yet: /ice follow.",
            ],
            Figures = [.. filed.Select(ice => IceFigures.Report.Of(ice.Filed.Number)), IceFigures.Told.Of(channels)],
            Cautions = IceCautions.Of(filed.Any(ice => ice.Filed.ToReport().IsBadNews)),
            Actions = [new("Board", ActionKind.Run, "ice board", new Dictionary<string, string> { ["water"] = filed[0].Water })],
        };
    }
}
