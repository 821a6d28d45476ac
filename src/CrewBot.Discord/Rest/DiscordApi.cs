using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Rest;

/// <summary>The calls by name.</summary>
internal sealed class DiscordApi(RestClient rest)
{
    public CancellationToken TokenRefused => rest.TokenRefused;

    public Task<GatewayAdvice> GetGatewayAdviceAsync(CancellationToken cancellationToken) =>
        rest.SendAsync(new RestRequest(Routes.GatewayAdvice), WireJson.Default.GatewayAdvice, cancellationToken);

    public Task<Application> GetApplicationAsync(CancellationToken cancellationToken) =>
        rest.SendAsync(new RestRequest(Routes.CurrentApplication), WireJson.Default.Application, cancellationToken);

    public Task<Guild> GetGuildAsync(Snowflake guild, CancellationToken cancellationToken) =>
        rest.SendAsync(new RestRequest(Routes.Guild(guild)), WireJson.Default.Guild, cancellationToken);

    /// <summary>A person as a guild's member; a refusal with the status 404 when they are none, or the bot is not there.</summary>
    public Task<Member> GetMemberAsync(Snowflake guild, Snowflake person, CancellationToken cancellationToken) =>
        rest.SendAsync(new RestRequest(Routes.GuildMember(guild, person)), WireJson.Default.Member, cancellationToken);

    /// <summary>Sends an interaction's first answer, which has to arrive within the given time.</summary>
    public Task AnswerAsync<T>(
        Snowflake interaction,
        string token,
        T answer,
        JsonTypeInfo<T> shape,
        IReadOnlyList<Upload> files,
        TimeSpan within,
        CancellationToken cancellationToken) =>
        rest.SendAsync(
            new RestRequest(Routes.Callback(interaction, token)) { Json = Json(answer, shape), Files = files, Patience = within },
            cancellationToken);

    public Task EditOriginalAsync(
        Snowflake application,
        string token,
        MessageBody message,
        IReadOnlyList<Upload> files,
        CancellationToken cancellationToken) =>
        rest.SendAsync(MessageRequest(Routes.EditOriginal(application, token), message, files), cancellationToken);

    public Task FollowUpAsync(
        Snowflake application,
        string token,
        MessageBody message,
        IReadOnlyList<Upload> files,
        CancellationToken cancellationToken) =>
        rest.SendAsync(MessageRequest(Routes.FollowUp(application, token), message, files), cancellationToken);

    /// <summary>Posts a message; the enforced nonce makes repeating it harmless.</summary>
    public Task<Message> CreateMessageAsync(
        Snowflake channel,
        MessageBody message,
        string nonce,
        IReadOnlyList<Upload> files,
        CancellationToken cancellationToken) =>
        SendMessageAsync(
            Routes.CreateMessage(channel),
            message with { Nonce = nonce, EnforceNonce = true },
            files,
            cancellationToken);

    public Task<Message> EditMessageAsync(
        Snowflake channel,
        Snowflake id,
        MessageBody message,
        IReadOnlyList<Upload> files,
        CancellationToken cancellationToken) =>
        SendMessageAsync(Routes.EditMessage(channel, id), message, files, cancellationToken);

    public Task DeleteMessageAsync(Snowflake channel, Snowflake id, CancellationToken cancellationToken) =>
        rest.SendAsync(new RestRequest(Routes.DeleteMessage(channel, id)), cancellationToken);

    /// <summary>Opens a thread under a message, or without one in the channel.</summary>
    public Task<Channel> OpenThreadAsync(
        Snowflake channel, Snowflake? message, ThreadBody thread, CancellationToken cancellationToken) =>
        rest.SendAsync(
            Request(
                message is { } under ? Routes.ThreadUnderMessage(channel, under) : Routes.ThreadInChannel(channel),
                thread,
                WireJson.Default.ThreadBody),
            WireJson.Default.Channel,
            cancellationToken);

    /// <summary>Opens the direct messages with a person, or finds them.</summary>
    /// <returns>The channel.</returns>
    public async Task<Snowflake> OpenDirectChannelAsync(Snowflake person, CancellationToken cancellationToken)
    {
        var channel = await rest.SendAsync(
            Request(Routes.DirectChannel, new DirectChannelBody(person), WireJson.Default.DirectChannelBody),
            WireJson.Default.Channel,
            cancellationToken);
        return channel.Id ?? throw new DiscordApiException(Routes.DirectChannel, "gave the channel no id");
    }

    public Task<CommandDefinition[]> ListCommandsAsync(
        Snowflake application, Snowflake? guild, CancellationToken cancellationToken) =>
        rest.SendAsync(
            new RestRequest(Routes.ListCommands(application, guild)),
            WireJson.Default.CommandDefinitionArray,
            cancellationToken);

    /// <summary>Makes the list the whole set of commands. The answer is not read: some servers leave the ids out.</summary>
    public Task OverwriteCommandsAsync(
        Snowflake application, Snowflake? guild, CommandDefinition[] commands, CancellationToken cancellationToken) =>
        rest.SendAsync(
            Request(Routes.OverwriteCommands(application, guild), commands, WireJson.Default.CommandDefinitionArray),
            cancellationToken);

    private Task<Message> SendMessageAsync(
        Route route, MessageBody message, IReadOnlyList<Upload> files, CancellationToken cancellationToken) =>
        rest.SendAsync(MessageRequest(route, message, files), WireJson.Default.Message, cancellationToken);

    private static RestRequest MessageRequest(Route route, MessageBody message, IReadOnlyList<Upload> files) =>
        new(route) { Json = Json(message, WireJson.Default.MessageBody), Files = files };

    private static RestRequest Request<T>(Route route, T body, JsonTypeInfo<T> shape) =>
        new(route) { Json = Json(body, shape) };

    private static byte[] Json<T>(T body, JsonTypeInfo<T> shape) => JsonSerializer.SerializeToUtf8Bytes(body, shape);
}
