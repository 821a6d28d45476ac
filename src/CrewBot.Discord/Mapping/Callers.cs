using CrewBot.Chat.Commands;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>Says who acted and for which crew; in a direct message, which names none, the person's own.</summary>
/// <param name="homes">Finds the person's own crew.</param>
/// <param name="units">What units everybody speaks in who set none; null to go by the language.</param>
/// <param name="log">Notes what could not be asked.</param>
internal sealed class Callers(HomeCrews homes, CrewUnits? units, ILogger<Callers> log)
{
    public async ValueTask<Caller> OfAsync(Interaction interaction, CancellationToken cancellationToken)
    {
        var caller = CallerReader.Read(interaction, units);
        return interaction is { GuildId: null, Actor: { Id: { } person } actor }
            ? await AtHomeAsync(caller, actor, person, cancellationToken)
            : caller;
    }

    /// <summary>Who wrote a direct message; null where that is no person.</summary>
    public async ValueTask<Caller?> OfAsync(Message message, CancellationToken cancellationToken) =>
        message.Author is { Bot: not true, Id: { } person } author
            ? await AtHomeAsync(CallerReader.Read(author, units), author, person, cancellationToken)
            : null;

    private async Task<Caller> AtHomeAsync(Caller caller, User user, Snowflake person, CancellationToken cancellationToken)
    {
        try
        {
            return await homes.FindAsync(person, cancellationToken) is { } home
                ? caller with
                {
                    Crew = home.Guild.ToString(),
                    Name = CallerReader.NameOf(home.Member, user),
                    HasOtherCrews = home.IsOneOfSeveral,
                }
                : caller;
        }
        catch (DiscordApiException unknown)
        {
            // What needs no crew is answered all the same.
            log.LogWarning("Could not ask which crew {Person} is in: {Reason}", person, unknown.Message);
            return caller;
        }
    }
}
