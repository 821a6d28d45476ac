using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>
/// Answers <c>/derby create</c>: sets up a friendly contest; everything has a sensible default. Without options it shows what
/// that comes to, to be set up with one press or changed in a form.
/// </summary>
public sealed class CreateDerby(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyPosts posts) : ICommandHandler
{
    private readonly DerbyDraft _draft = new(options);

    public CommandInfo Info { get; } = new(
        "derby create", "Set up a friendly derby; everything has a default", "/derby create name:\"Basin day\" starts:08:00 ends:15:00 species:walleye",
        [
            options.Name, options.Starts, options.Ends, options.Format, options.Best, options.BestOfEach, options.Factors, options.Species,
            options.Water, options.Minimum, options.Step, options.Rounding, options.OnlyFate, options.Proof, options.Grace, options.Protests,
            options.Ties, options.Ranking, options.Teams, options.TeamBest, options.MostEntries,
        ])
    {
        AlsoSaid = ["derby start", "derby new", "derby begin", "derby make", "derby plan", "start derby", "start a derby", "new derby"],
        Writes = true,
        Role = Role.Steward,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var draft = _draft.Of(request);
        return draft.Fault is { } fault ? Reply.Refuse(fault)
            : request.Written.Count == 0 ? Offer(request, draft.Value!)
            : await book.WriteOnceAsync(request, (session, member) => CreateAsync(request, session, member, draft.Value!), cancellationToken);
    }

    private async Task<Reply> CreateAsync(Request request, CrewSession session, CrewMember member, Derby draft)
    {
        if (await DerbyFinder.FindLiveAsync(draft.Name, session, request.At) is { } same)
        {
            return Reply.Refuse($"{same.Name} is the name of derby {same.Number}, which is not over yet: give another, such as name:\"{same.Name} 2\"");
        }

        var derbies = new DerbyRepository(session);
        var place = (await new CrewRepository(session).ChannelsAsync()).FirstOrDefault(channel => channel.Purpose == "derby").Channel;
        var number = await derbies.AddAsync(draft with { CreatedBy = member.Id, Place = place ?? request.Place }, request.At);
        await new LedgerRepository(session).AppendAsync(number, at => new Created(at, request.At, member.Id));

        // As whoever asks later finds it: instants are kept to the millisecond.
        var derby = (await derbies.FindAsync(number, member.Id))!;
        await posts.KeepAsync(session, derby, request);
        return new Reply
        {
            Headline = $"Derby {derby.Number}, {derby.Name}, is set up",
            Lines = new DerbyRules(derby, knowledge).Lines(request.At),
            Figures = [DerbyFigures.Number.Of(derby.Number)],
            Actions = [DerbyActions.Join(derby), DerbyActions.Standings(derby)],
            Audience = Audience.Crew,
        };
    }

    private Reply Offer(Request request, Derby draft)
    {
        var ends = TimeZoneInfo.ConvertTime(draft.Settings.Window.Ends, request.Caller.Zone).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        var usual = new Dictionary<string, string> { [options.Name.Name] = draft.Name, [options.Ends.Name] = ends };
        var scoring = new Dictionary<string, string>(usual)
        {
            [options.Format.Name] = "best total",
            [options.Best.Name] = DerbyDraft.UsualBest.ToString(CultureInfo.InvariantCulture),
            [options.Step.Name] = request.Units == CrewUnits.Customary ? "1/4in" : "0.5cm",
            [options.Proof.Name] = "crewmate",
        };
        return new Reply
        {
            Headline = $"{draft.Name}, with the usual rules? Nothing is set up yet",
            Lines = new DerbyRules(draft, knowledge).Lines(request.At),
            Actions =
            [
                new ReplyAction("Set it up", ActionKind.Run, Info.Path, usual),
                ReplyAction.Form("Other time or fish", Info.Path, usual, options.Name, options.Starts, options.Ends, options.Species, options.Water),
                ReplyAction.Form("Other scoring", Info.Path, scoring, options.Format, options.Best, options.Step, options.OnlyFate, options.Proof),
            ],
        };
    }
}
