using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Boxes;

/// <summary>The options that box commands share, each declared once.</summary>
public sealed class BoxOptions(TradeKnowledge knowledge)
{
    private const int MostAtOnce = 10;

    public CommandOption<IReadOnlyList<Gear>> Items { get; } = CommandOption.Required(
        "item", "What you own: braid 6lb, 1/8oz jigging spoon, hook 6, auger 8in, shelter for 3, heater",
        new ListReader<Gear>(new GearReader(knowledge), MostAtOnce));

    public CommandOption<string> Own { get; } = CommandOption.Required(
        "item", "What to take out, by its name in your box", new OwnGearReader());

    public CommandOption<bool> Mine { get; } = CommandOption.Optional(
        "whose", "Your box or everybody's", new ChoiceReader<bool>([("mine", true), ("crew", false)]));
}
