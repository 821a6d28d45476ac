namespace CrewBot.Chat.Commands;

/// <summary>Somebody who was pointed at.</summary>
/// <param name="Id">The platform's own id of the person.</param>
public sealed record Person(string Id)
{
    /// <summary>The text that an option holds.</summary>
    public string Text => $"@{Id}";
}
