using System.Text.Json.Serialization;
using CrewBot.Core.Pictures;

namespace CrewBot.Chat.Commands;

/// <summary>A picture that goes with a reply. It is composed when somebody looks, not when the reply is made.</summary>
public sealed record Picture
{
    /// <summary>What is drawn: <c>rig</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>What it shows, for whoever can't see it.</summary>
    public string AlternativeText
    {
        get => field ?? Compose?.Invoke().AlternativeText ?? "";
        init;
    }

    /// <summary>Puts together what is to be drawn; null for a reply that was read back from its stored form.</summary>
    [JsonIgnore]
    public Func<PictureData>? Compose { get; init; }
}
