using CrewBot.Chat.Commands;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Answers what a person writes to the bot alone, as a line typed in a terminal is answered: a command, or a shorthand such
/// as <c>log walleye 22.5in released</c>, with a photo if they like.
/// </summary>
internal sealed class DirectMessages(
    DiscordApi api, CommandCatalog catalog, Dispatcher dispatcher, Callers callers, CardWriter cards, IGivenFiles files, TimeProvider clock)
{
    private readonly SeenEvents _seen = new();

    public async Task HandleAsync(Message message, CancellationToken cancellationToken)
    {
        if (message is { Id: { } id, ChannelId: { } channel }
            && _seen.TryAdd(id)
            && await callers.OfAsync(message, cancellationToken) is { } caller)
        {
            var reply = await AnswerAsync(message, id, caller, cancellationToken);
            var card = cards.Write(reply, CardPurpose.Answer);
            await api.CreateMessageAsync(
                channel, card.Body with { MessageReference = new MessageReference { MessageId = id } }, id.ToString(), card.Files, cancellationToken);
        }
    }

    private async Task<Reply> AnswerAsync(Message message, Snowflake id, Caller caller, CancellationToken cancellationToken)
    {
        var typed = CommandText.Read(message.Content ?? "", catalog);
        if (typed.Value is not { } command)
        {
            return Reply.Refuse(typed.Fault!);
        }

        var call = new CommandCall(id.ToString(), clock.GetUtcNow(), caller, command.Path, command.Options)
        {
            IsDirect = true,
            Place = message.ChannelId?.ToString(),
            Given = PhotoOf(message, command.Path),
            Files = files,
        };
        var reply = await dispatcher.AnswerAsync(await callers.NamedAsync(call, catalog, cancellationToken), cancellationToken);
        return reply.Problem is { } problem ? reply with { Problem = Signpost.Beside(problem, message.Content!, catalog) } : reply;
    }

    private Dictionary<string, string> PhotoOf(Message message, string path) =>
        catalog.TryFind(path, out var handler) && handler.Info.OnMessage?.Photo is { } option && MessageReader.PhotoOf(message) is { } photo
            ? new() { [option.Name] = photo.Text }
            : [];
}
