using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby standings</c>.</summary>
public sealed class ShowStandings(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby standings", "Who stands where in the derby", "/derby standings", [options.Derby])
    {
        AlsoSaid =
        [
            "leaderboard", "leader board", "who's winning", "whos winning", "who is winning", "score", "scores", "scoreboard",
            "derby leaderboard", "derby leaders", "derby board", "derby score", "derby scores", "derby scoreboard",
        ],
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => book.ReadAsync(request, async session =>
    {
        var member = await new MemberRepository(session).FindAsync(request.Caller.Member);
        var found = await DerbyFinder.FindAsync(request, options, session, member?.Id);
        if (found.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var sheet = await boards.SheetAsync(session, found.Value!, request);
        var reply = StandingsReply.Of(sheet, knowledge, request.At, member?.Id);
        return sheet.Standings.Lines.Count == 0 ? reply : reply with
        {
            Pictures = [Picture.Of("derby", request, () => RacePictures.Of(sheet, knowledge, request.At))],
            Actions = [ReplyAction.Picture(request), .. reply.Actions],
        };
    }, cancellationToken);
}
