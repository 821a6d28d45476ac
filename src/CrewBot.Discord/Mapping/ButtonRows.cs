using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Lays a reply's actions out: two rows of buttons at most, what is left in a list to choose from.
/// </summary>
internal sealed class ButtonRows(PressCodec codec, CommandCatalog catalog)
{
    /// <summary>The id of the list; its options carry what they stand for.</summary>
    public const string ListId = "1list";

    private const int MostButtons = 2 * Limits.ButtonsInARow;

    public IReadOnlyList<Component> Of(Reply reply, CardPurpose purpose)
    {
        var offered = reply.Actions
            .Where(action => !(purpose is CardPurpose.Shared && action.Kind is ActionKind.Share))
            .Select(action => (Action: action, Id: IdOf(action)))
            .Where(offer => offer.Id is not null)
            .ToList();
        var inList = offered.Count > MostButtons
            ? offered.Where(offer => offer.Action.Kind is ActionKind.Run).Skip(MostButtons - Fixed(offered)).ToList()
            : [];
        var rows = offered.Except(inList)
            .Select(offer => Button(offer.Action, offer.Id!))
            .Chunk(Limits.ButtonsInARow)
            .Take(MostButtons / Limits.ButtonsInARow)
            .Select(row => new Component { Type = ComponentType.ActionRow, Components = row })
            .ToList();
        if (inList.Count > 0)
        {
            rows.Add(List([.. inList.Take(Limits.SelectOptions)]));
        }

        return rows;
    }

    private static int Fixed(List<(ReplyAction Action, string? Id)> offered) =>
        Math.Min(MostButtons, offered.Count(offer => offer.Action.Kind is not ActionKind.Run));

    private string? IdOf(ReplyAction action)
    {
        var typed = CommandText.Read(action.Command, catalog);
        return typed.Value is { } command && typed.Fault is null
            ? codec.Write(new Press(KindOf(action.Kind), command.Path, command.Options))
            : null;
    }

    private static PressKind KindOf(ActionKind kind) => kind switch
    {
        ActionKind.Why => PressKind.Why,
        ActionKind.Share => PressKind.Share,
        _ => PressKind.Run,
    };

    private static Component Button(ReplyAction action, string id) => new()
    {
        Type = ComponentType.Button,
        Style = (int)(action.Kind is ActionKind.Share ? ButtonStyle.Success : ButtonStyle.Secondary),
        Label = Shortening.Fit(action.Label, Limits.ButtonLabel),
        CustomId = id,
    };

    private static Component List(IReadOnlyList<(ReplyAction Action, string? Id)> offers) => new()
    {
        Type = ComponentType.ActionRow,
        Components =
        [
            new Component
            {
                Type = ComponentType.StringSelect,
                CustomId = ListId,
                Placeholder = "More",
                Options =
                [
                    .. offers.Select(offer => new SelectOption
                    {
                        Label = Shortening.Fit(offer.Action.Label, Limits.SelectLabel),
                        Value = offer.Id!,
                    }),
                ],
            },
        ],
    };
}
