using CrewBot.Chat.Boxes;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Catches;

/// <summary>Takes a lure in the angler's own words, and offers those in their box.</summary>
/// <param name="words">Reads the words.</param>
public sealed class OwnLureReader(NameReader words) : OptionReader<string>
{
    public override string Accepts => words.Accepts;

    public override bool CanSuggest => true;

    public override Reading<string> Read(string text, CrewUnits units) => words.Read(text, units);

    public override IEnumerable<string> Suggest(string begun, Caller caller) => OwnGear.Suggest(caller, begun, BoxKind.Lure);
}
