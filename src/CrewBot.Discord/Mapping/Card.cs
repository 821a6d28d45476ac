using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>A reply ready for the platform.</summary>
/// <param name="Body">Without the flag that would make it private.</param>
/// <param name="IsPrivate">For the asker's eyes only.</param>
/// <param name="IsProblem">Says why there is no answer.</param>
internal sealed record Card(MessageBody Body, bool IsPrivate, bool IsProblem)
{
    public IReadOnlyList<Upload> Files { get; init; } = [];

    /// <summary>The ids of everything on it that can be pressed or chosen.</summary>
    public IEnumerable<string> Ids
    {
        get
        {
            foreach (var row in Body.Components ?? [])
            {
                foreach (var part in row.Components ?? [])
                {
                    foreach (var option in part.Options ?? [])
                    {
                        yield return option.Value;
                    }

                    if (part.CustomId is { } id)
                    {
                        yield return id;
                    }
                }
            }
        }
    }

    /// <summary>The body as a new message.</summary>
    public MessageBody AsMessage => IsPrivate ? Body with { Flags = MessageFlags.Ephemeral } : Body;
}
