using System.Text.Json;

namespace CrewBot.Core.Knowledge;

/// <summary>A value that does not fit its field; the message is the remedy, in a crew member's words.</summary>
internal sealed class UnfitValueException(string remedy) : JsonException(remedy)
{
    /// <summary>The remedy; the message itself may have a path added to it on the way up.</summary>
    public string Remedy { get; } = remedy;
}
