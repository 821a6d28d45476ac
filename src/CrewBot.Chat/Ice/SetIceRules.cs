using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice rules</c>: whose table the crew follows, and figures of its own. Both only ever ask for more ice.</summary>
public sealed class SetIceRules(IceOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice rules", "Owner: follow an authority's table, or ask for more ice than the tables do",
        "/ice rules load:\"on foot\" thickness:8in reference:\"town notice of 2 Jan 2027\"",
        [options.Authority, options.Use, options.AtLeast, options.Reference])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, _) => SetAsync(request, session), cancellationToken);

    private async Task<Reply> SetAsync(Request request, CrewSession session)
    {
        if (request.Caller.Role < Role.Owner)
        {
            return Reply.Refuse("Only the crew's owner sets what it asks of ice.");
        }

        if (FaultOf(request) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var rules = new IceRuleRepository(session);
        if (request.TryGet(options.Authority, out var key))
        {
            await rules.ChooseAsync(key);
        }

        if (request.TryGet(options.Use, out var use))
        {
            await rules.SetAsync(use, request.Get(options.AtLeast), request.Get(options.Reference));
        }

        var authority = await rules.AuthorityAsync();
        return new Reply
        {
            Headline = "What this crew asks of ice",
            Lines =
            [
                authority is null ? "No authority's table is chosen." : $"Table: {authority.Name} ({authority.Date}).",
                .. (await rules.FiguresAsync()).Select(figure =>
                    $"{IceWords.Uses.First(named => named.Value == figure.Use).Word}: {IceShow.Required(figure.Thickness, request.Units)} ({figure.Reference})."),
                "The largest of these and the program's own figures is asked for.",
            ],
            Cautions = IceCautions.Of(isBad: false),
        };
    }

    private string? FaultOf(Request request) =>
        request.TryGet(options.Use, out var use)
            ? !request.TryGet(options.AtLeast, out var own) || !request.Has(options.Reference) ? "A figure of your own takes load, thickness and reference."
                : own.Length < ProjectFigures.For(use).Thickness
                    ? $"A crew can ask for more ice, never for less: the figure there is {IceShow.Required(ProjectFigures.For(use).Thickness, request.Units)}."
                : null
        : request.Has(options.AtLeast) || request.Has(options.Reference) ? "A figure of your own takes load, thickness and reference."
        : request.Has(options.Authority) ? null
        : "Give authority:minnesota, or load, thickness and reference.";
}
