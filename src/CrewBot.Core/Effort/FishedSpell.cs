using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>Lines of one angler in the water, with what was recorded of them. What is null nobody said.</summary>
public sealed record FishedSpell
{
    /// <summary>The longest that a spell is believed: an "up" was forgotten when more time has gone by (judgement).</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(18);

    /// <summary>Number of the angler.</summary>
    public required long Angler { get; init; }

    /// <summary>How many lines, 1 or more.</summary>
    public required int Lines { get; init; }

    /// <summary>Since when, by the angler's clock.</summary>
    public required DateTimeOffset Down { get; init; }

    /// <summary>Until when; not before <see cref="Down"/>.</summary>
    public required DateTimeOffset Up { get; init; }

    /// <summary>Key of the presentation.</summary>
    public string? Presentation { get; init; }

    public Mood? Mood { get; init; }

    /// <summary>Depth of the water.</summary>
    public Length? Depth { get; init; }

    /// <summary>The part of it that lies in a span of time; null when none does.</summary>
    public FishedSpell? Within(DateTimeOffset from, DateTimeOffset to)
    {
        var (down, up) = (Down > from ? Down : from.ToOffset(Down.Offset), Up < to ? Up : to.ToOffset(Up.Offset));
        return down <= up ? this with { Down = down, Up = up } : null;
    }
}
