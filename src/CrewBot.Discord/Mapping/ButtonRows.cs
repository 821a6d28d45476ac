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

    public List<Component> Of(Reply reply, CardPurpose purpose) => purpose switch
    {
        CardPurpose.Why or CardPurpose.SharedPicture => [],
        CardPurpose.Picture => UnderPicture(reply),
        _ => UnderReply(reply, purpose),
    };

    // A picture can be handed on; what else can be done is offered on the card that it was asked for on.
    private List<Component> UnderPicture(Reply reply) =>
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
        var offered = Offered(purpose is CardPurpose.Shared ? [.. reply.Actions.Where(action => action.Kind is not ActionKind.Share)] : reply.Actions);
        var inList = offered.Count > MostButtons
            ? offered.Where(offer => IsStep(offer.Action)).Skip(MostButtons - Fixed(offered)).ToList()
            : [];
        var rows = Rows(inList.Count == 0 ? offered : [.. offered.Except(inList)]);
        if (inList.Count > 0)
        {
            rows.Add(List("More", inList, ListId));
        }

        for (var index = 0; index < reply.Choices.Count && rows.Count < Limits.Rows; index++)
        {
            var choice = reply.Choices[index];
            if (Offered(choice.Choices) is { Count: > 0 } offers)
            {
                rows.Add(List(choice.Prompt, offers, $"{ListId}{index}"));
            }
        }

        return rows;
    }

    private static List<Component> Rows(List<(ReplyAction Action, string Id)> offered)
    {
        var rows = new List<Component>(Limits.Rows);
        for (var first = 0; first < Math.Min(offered.Count, MostButtons); first += Limits.ButtonsInARow)
        {
            var inRow = offered.GetRange(first, Math.Min(offered.Count - first, Limits.ButtonsInARow));
            rows.Add(Row(inRow.ConvertAll(static offer => Button(offer.Action, offer.Id))));
        }

        return rows;
    }

    private static Component Row(List<Component> buttons) => new() { Type = ComponentType.ActionRow, Components = buttons };

    private List<(ReplyAction Action, string Id)> Offered(IReadOnlyList<ReplyAction> actions)
    {
        var offered = new List<(ReplyAction Action, string Id)>(actions.Count);
        foreach (var action in actions)
        {
            // Two with one id would cost the whole message.
            var press = new Press(KindOf(action.Kind), action.Path, action.Options) { Fields = action.Fields };
            if (codec.Write(press) is { } id && !offered.Exists(other => other.Id == id))
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
