using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Learning;

/// <summary>The options of what a crew's fishing teaches.</summary>
public sealed class LearnOptions(CatchOptions catches)
{
    private const int MostDimensions = 3;

    public CommandOption<Species> Species { get; } = catches.OtherSpecies;

    public CommandOption<IReadOnlyList<EffortDimension>> By { get; } = CommandOption.Optional(
        "by", "What to compare: presentation, mood, depth, time or species; up to three together",
        new ListReader<EffortDimension>(new ChoiceReader<EffortDimension>(
            [.. Enum.GetValues<EffortDimension>().Select(dimension => (dimension.ToString().ToLowerInvariant(), dimension))]), MostDimensions));

    public CommandOption<Period> Span { get; } = catches.Span;

    public CommandOption<WaterRules> Water { get; } = catches.Water;

    public CommandOption<Mood> Mood { get; } = CommandOption.Optional("mood", "Only hours in which the fish were in this mood", catches.Mood.Reader);

    /// <summary>All of them.</summary>
    public IReadOnlyList<CommandOption> All => [Species, By, Mood, Span, Water];
}
