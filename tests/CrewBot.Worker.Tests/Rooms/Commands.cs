using CrewBot.Chat.Commands;
using Microsoft.Extensions.Logging.Abstractions;

namespace CrewBot.Worker.Tests.Rooms;

/// <summary>A small trade of its own, so that a room is tested apart from what the real commands answer.</summary>
internal static class Commands
{
    public static readonly CommandOption<string> Fish = CommandOption.Required(
        "species", "What you are after", new ChoiceReader<string>([("walleye", "w"), ("yellow perch", "y"), ("northern pike", "n")]));

    public static readonly CommandOption<string> Mood = CommandOption.Optional(
        "mood", "How they bite", new ChoiceReader<string>([("negative", "-"), ("neutral", "0"), ("positive", "+")]));

    public static readonly CommandOption<string> Ask = CommandOption.Optional("ask", "All in a few words", new FreeTextReader("words, such as walleye"));

    public static CommandCatalog Catalog() => new([new Plan(), new Drop()], bare: "rig plan");

    public static Dispatcher Dispatcher(CommandCatalog catalog) => new(catalog, CrewBook.None, NullLogger<Dispatcher>.Instance);

    private sealed class Plan : ICommandHandler
    {
        public CommandInfo Info { get; } =
            new("rig plan", "Plans a rig", "/rig plan species:walleye", [Fish, Mood, Ask]) { Shorthand = new FewWords() };

        public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(new Reply
        {
            Headline = $"{request.Written["species"]}, {request.Written.GetValueOrDefault("mood", "neutral")}: jigging spoon",
            Lines = ["Line: 10-lb braid"],
            Reasons = ["Spoon: it calls from afar."],
            Cautions = ["Mind the trebles."],
            Pictures = [new Picture { Kind = "rig", AlternativeText = "A rig." }],
            Figures =
            [
                new("drop.time", 12.34567, "s"), new("lure.wet-weight", 0.0164123, "N"), new("hole.margin", 117.7, "mm"),
                new("line2.drop.time", 9, "s"), new("alt1.drop.time", 5, "s"),
            ],
            Actions =
            [
                new("One up", ActionKind.Run, "rig plan", new Dictionary<string, string> { ["species"] = "northern pike" }),
                new("Why", ActionKind.Why, "rig plan"),
                new("Share", ActionKind.Share, "rig plan"),
                new("Picture", ActionKind.Picture, "rig plan"),
            ],
        });
    }

    private sealed class Drop : ICommandHandler
    {
        public CommandInfo Info { get; } = new("rig drop", "How long a lure takes down", "/rig drop mood:neutral", [Mood]);

        public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
            Task.FromResult(request.GetOr(Mood, "0") == "+"
                ? Reply.Refuse("Not in that mood.") with { Actions = [new("Neutral then", ActionKind.Run, "rig drop", new Dictionary<string, string> { ["mood"] = "neutral" })] }
                : new Reply { Headline = $"Asked at {request.At:O} as {request.Id} by {request.Caller.Member}" });
    }

    private sealed class FewWords : Shorthand
    {
        public override CommandOption<string> Words { get; } = Ask;

        public override Expansion Expand(string words, Caller caller, IEnumerable<string> named) => new([new("species", words)], []);
    }
}
