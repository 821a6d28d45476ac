using CrewBot.Chat.Commands;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>Says who acted and for which crew; in a direct message, which names none, the person's own.</summary>
/// <param name="homes">Finds the person's own crew.</param>
/// <param name="names">Says what a crew is called.</param>
/// <param name="units">What units everybody speaks in who set none; null to go by the language.</param>
/// <param name="log">Notes what could not be asked.</param>
internal sealed class Callers(HomeCrews homes, CrewNames names, CrewUnits? units, ILogger<Callers> log)
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

    /// <summary>
    /// The call with the crew's name, where a command needs it: to store it, or to say which of several crews is meant. Takes a
    /// question to the platform, so only what is deferred in time may wait for it.
    /// </summary>
    public async ValueTask<CommandCall> NamedAsync(CommandCall call, CommandCatalog catalog, CancellationToken cancellationToken) =>
        (call.Caller.HasOtherCrews || (catalog.TryFind(call.Path, out var handler) && handler.Info.Writes))
        && Snowflake.TryParse(call.Caller.Crew, out var guild)
            ? call with { Caller = call.Caller with { CrewName = await names.OfAsync(guild).WaitAsync(cancellationToken) } }
            : call;

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
