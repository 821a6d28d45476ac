using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Boxes;

/// <summary>Takes the name of a thing in the caller's own box.</summary>
public sealed class OwnGearReader : OptionReader<string>
{
    public override string Accepts => "a thing in your box, such as braid 6 lb";

    public override bool CanSuggest => true;

    public override Reading<string> Read(string text, CrewUnits units) => text;

    public override IEnumerable<string> Suggest(string begun, Caller caller) => OwnGear.Suggest(caller, begun);
}
