using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Catches;

/// <summary>Takes a note of limited length.</summary>
public sealed class NoteReader(int longest) : OptionReader<string>
{
    public override string Accepts => $"a few words, up to {longest} characters";

    public override Reading<string> Read(string text, CrewUnits units) =>
        text.Length <= longest ? text : new Misread($"{text.Length} characters is too long: give {Accepts}.");
}
