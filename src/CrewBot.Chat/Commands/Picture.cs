using System.Text.Json.Serialization;
using CrewBot.Core.Pictures;

namespace CrewBot.Chat.Commands;

/// <summary>A picture that goes with a reply. It is composed when somebody looks, not when the reply is made.</summary>
public sealed record Picture
{
    private const int Morning = 7;
    private const int Evening = 18;

    /// <summary>What is drawn: <c>rig</c>. The file is called so.</summary>
    public required string Kind { get; init; }

    /// <summary>What it shows, for whoever can't see it.</summary>
    public string AlternativeText
    {
        get => field ?? Compose?.Invoke().AlternativeText ?? "";
        init;
    }

    /// <summary>Asked for by night, when a white page blinds in a dark shelter; by day a dark one is lost in the glare of snow.</summary>
    [JsonIgnore]
    public bool ByNight { get; init; }

    /// <summary>Puts together what is to be drawn; null for a reply that was read back from its stored form.</summary>
    [JsonIgnore]
    public Func<PictureData>? Compose { get; init; }

    /// <summary>A picture for whoever asks.</summary>
    /// <param name="kind">What is drawn.</param>
    /// <param name="request">Says what time it is there.</param>
    /// <param name="compose">Puts together what is to be drawn; pure.</param>
    public static Picture Of(string kind, Request request, Func<PictureData> compose) => new()
    {
        Kind = kind,
        ByNight = TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone).Hour is < Morning or >= Evening,
        Compose = compose,
    };
}
