using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat;

internal static class ChatServices
{
    public static void AddChat(this IServiceCollection services, TradeKnowledge knowledge)
    {
        services.AddSingleton(knowledge);
        services.AddSingleton<ICommandHandler, Stand>();
        services.AddSingleton(p => new CommandCatalog(p.GetServices<ICommandHandler>(), "rig plan"));
        services.AddSingleton<Dispatcher>();
    }
}
internal sealed class Stand : ICommandHandler
{
    private static readonly CommandOption<string> Ask = CommandOption.Required("ask", "Words", new FreeTextReader("words such as walleye 24ft"));
    private static readonly CommandOption<string> Mood = CommandOption.Optional("mood", "How they bite", new ChoiceReader<string>([("negative", "n"), ("neutral", "o"), ("positive", "p")]));
    public CommandInfo Info { get; } = new("rig plan", "Stands in", "/rig plan ask:\"walleye 24ft\"", [Ask, Mood]) { Shorthand = new S(Ask) };
    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(new Reply
    {
        Headline = $"{request.Get(Ask)}: a 1/8 oz (3.5 g) tungsten jig on 4-lb braid, barely moving",
        Lines = ["Line: 4-lb braid (0.10 mm, about as thick as 1-lb monofilament) straight from a light rod's reel, to a 3 ft (0.9 m) leader", "Caution ahead"],
        Cautions = ["Ice is never safe because a bot says so: measure as you go and heed the local authority."],
        Reasons = ["Negative fish want less of everything."],
        Figures = [new("drop.time", 12.3456, "s"), new("alt1.drop.time", 0.0123456, "s")],
        Actions = [new("One up", ActionKind.Run, "/rig plan ask:louder"), new("Why", ActionKind.Why, "why"), new("Share", ActionKind.Share, "share")],
    });
    private sealed class S(CommandOption<string> words) : Shorthand
    {
        public override CommandOption<string> Words => words;
        public override Expansion Expand(string words, CrewUnits units) => new([], []);
    }
}
