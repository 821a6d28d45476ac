using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Lays a reply's actions out: two rows of buttons at most, what is left in a list to choose from, then the reply's own
/// lists.
/// </summary>
internal sealed class ButtonRows(PressCodec codec)
{
    /// <summary>How the ids of lists begin; their options carry what they stand for.</summary>
    public const string ListId = "1list";

    private const int MostButtons = 2 * Limits.ButtonsInARow;

    public IReadOnlyList<Component> Of(Reply reply, CardPurpose purpose) => purpose switch
    {
        CardPurpose.Why or CardPurpose.SharedPicture => [],
        CardPurpose.Picture => UnderPicture(reply),
        _ => UnderReply(reply, purpose),
    };

    // A picture can be handed on; what else can be done is offered on the card that it was asked for on.
    private Component[] UnderPicture(Reply reply) =>
    [
        .. reply.Actions
            .Where(action => action.Kind is ActionKind.Picture)
            .Select(action => (action, Id: codec.Write(new Press(PressKind.SharePicture, action.Path, action.Options))))
            .Where(offer => offer.Id is not null)
            .Take(1)
            .Select(offer => Row([Button(new("Share", ActionKind.Share, offer.action.Path, offer.action.Options), offer.Id!)])),
    ];

    private List<Component> UnderReply(Reply reply, CardPurpose purpose)
    {
        var offered = Offered(reply.Actions.Where(action => !(purpose is CardPurpose.Shared && action.Kind is ActionKind.Share)));
        var inList = offered.Count > MostButtons
            ? offered.Where(offer => IsStep(offer.Action)).Skip(MostButtons - Fixed(offered)).ToList()
            : [];
        var rows = (inList.Count == 0 ? offered : offered.Except(inList))
            .Select(offer => Button(offer.Action, offer.Id))
            .Chunk(Limits.ButtonsInARow)
            .Take(MostButtons / Limits.ButtonsInARow)
            .Select(Row)
            .ToList();
        if (inList.Count > 0)
        {
            rows.Add(List("More", inList, ListId));
        }

        rows.AddRange(reply.Choices
            .Select((choice, index) => (choice.Prompt, Offers: Offered(choice.Choices), Id: $"{ListId}{index}"))
            .Where(list => list.Offers.Count > 0)
            .Select(list => List(list.Prompt, list.Offers, list.Id)));
        return [.. rows.Take(Limits.Rows)];
    }

    private static Component Row(Component[] buttons) => new() { Type = ComponentType.ActionRow, Components = buttons };

    private List<(ReplyAction Action, string Id)> Offered(IEnumerable<ReplyAction> actions)
    {
        var offered = new List<(ReplyAction Action, string Id)>();
        var ids = new HashSet<string>();
        foreach (var action in actions)
        {
            // Two with one id would cost the whole message.
            var press = new Press(KindOf(action.Kind), action.Path, action.Options) { Fields = action.Fields };
            if (codec.Write(press) is { } id && ids.Add(id))
            {
                offered.Add((action, id));
            }
        }

        return offered;
    }

    private static bool IsStep(ReplyAction action) => action.Kind is ActionKind.Run or ActionKind.Form;

    private static int Fixed(List<(ReplyAction Action, string Id)> offered) =>
        Math.Min(MostButtons, offered.Count(offer => !IsStep(offer.Action)));

    private static PressKind KindOf(ActionKind kind) => kind switch
    {
        ActionKind.Why => PressKind.Why,
        ActionKind.Share => PressKind.Share,
        ActionKind.Picture => PressKind.Picture,
        ActionKind.Form => PressKind.Open,
        _ => PressKind.Run,
    };

    private static Component Button(ReplyAction action, string id) => new()
    {
        Type = ComponentType.Button,
        Style = (int)(action.Kind is ActionKind.Share ? ButtonStyle.Success : ButtonStyle.Secondary),
        Label = Shortening.Fit(action.Label, Limits.ButtonLabel),
        CustomId = id,
    };

    private static Component List(string prompt, IReadOnlyList<(ReplyAction Action, string Id)> offers, string id) => new()
    {
        Type = ComponentType.ActionRow,
        Components =
        [
            new Component
            {
                Type = ComponentType.StringSelect,
                CustomId = id,
                Placeholder = Shortening.Fit(prompt, Limits.SelectPrompt),
                Options =
                [
                    .. offers.Take(Limits.SelectOptions).Select(offer => new SelectOption
                    {
                        Label = Shortening.Fit(offer.Action.Label, Limits.SelectLabel),
                        Value = offer.Id,
                    }),
                ],
            },
        ],
    };
}
