namespace CrewBot.Chat.Commands;

/// <summary>Reads which channel is meant, by the platform's own id. Platforms offer their channels; a mention reads too.</summary>
public sealed class ChannelReader : OptionReader<string>
{
    private const int Longest = 60;

    public override OptionKind Kind => OptionKind.Channel;

    public override string Accepts => "a channel, such as #catches";

    public override Reading<string> Read(string text, CrewUnits units) =>
        text.Trim('<', '#', '>', ' ') is { Length: > 0 and <= Longest } id ? id : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
}
