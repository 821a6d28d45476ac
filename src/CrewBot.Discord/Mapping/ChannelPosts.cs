using System.Collections.Concurrent;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>Posts to channels, threads and direct messages with the bot's own right.</summary>
internal sealed class ChannelPosts(DiscordApi api, CardWriter cards) : IChatPost
{
    private const char Person = '@';
    private const int ThreadIsThere = 160004;
    private const int UnknownMessage = 10008;
    private const int ThreeDays = 4320;

    // A person's channel is theirs for good.
    private readonly ConcurrentDictionary<Snowflake, Snowflake> _directChannels = new();

    public bool Reaches(string crew, string place) =>
        Snowflake.TryParse(crew, out _) && Snowflake.TryParse(place.TrimStart(Person), out _);

    public async Task<Posted> PostAsync(
        string place, string key, Reply reply, bool notifies, CancellationToken cancellationToken)
    {
        var card = cards.Write(reply, CardPurpose.Shared);
        var body = notifies ? card.Body : card.Body with { Flags = MessageFlags.Silent };
        var message = await TriedAsync(async () => await api.CreateMessageAsync(
            await ChannelAsync(place, cancellationToken), body, Nonce(key), card.Files, cancellationToken));
        var channel = message.ChannelId ?? await ChannelAsync(place, cancellationToken);
        return new Posted(channel.ToString(), message.Id?.ToString() ?? throw new DiscordApiException(
            Routes.CreateMessage(channel), "gave the message no id"));
    }

    public Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken)
    {
        var card = cards.Write(reply, CardPurpose.Shared);
        return TriedAsync(() => api.EditMessageAsync(
            Id(posted.Place), Id(posted.Id), card.Body, card.Files, cancellationToken));
    }

    public async Task DeleteAsync(Posted posted, CancellationToken cancellationToken)
    {
        try
        {
            await TriedAsync(async () =>
            {
                await api.DeleteMessageAsync(Id(posted.Place), Id(posted.Id), cancellationToken);
                return true;
            });
        }
        catch (PostGoneException)
        {
        }
    }

    public async Task<string> OpenThreadAsync(Posted under, string name, CancellationToken cancellationToken)
    {
        var thread = new ThreadBody
        {
            Name = Shortening.Fit(name, Limits.ThreadName),
            AutoArchiveDuration = ThreeDays,
        };
        try
        {
            var opened = await api.OpenThreadAsync(Id(under.Place), Id(under.Id), thread, cancellationToken);
            return opened.Id?.ToString() ?? under.Id;
        }
        catch (DiscordApiException twice) when (twice.Code == ThreadIsThere)
        {
            return under.Id; // a thread under a message has the message's own id
        }
    }

    private async Task<Snowflake> ChannelAsync(string place, CancellationToken cancellationToken)
    {
        if (!place.StartsWith(Person))
        {
            return Id(place);
        }

        var person = Id(place[1..]);
        return _directChannels.TryGetValue(person, out var known)
            ? known
            : _directChannels[person] = await api.OpenDirectChannelAsync(person, cancellationToken);
    }

    /// <summary>Tells what will never work from what may work later.</summary>
    private static async Task<T> TriedAsync<T>(Func<Task<T>> attempt)
    {
        try
        {
            return await attempt();
        }
        catch (DiscordApiException gone) when (gone.Code == UnknownMessage)
        {
            throw new PostGoneException(gone.Message);
        }
        catch (DiscordApiException refused) when (IsForGood(refused))
        {
            throw new PostImpossibleException(refused.Message);
        }
    }

    // A refusal without a code of the platform's own comes from something in between, and may pass.
    private static bool IsForGood(DiscordApiException refused) =>
        refused is { Code: not 0, Status: HttpStatusCode.BadRequest or HttpStatusCode.Forbidden or HttpStatusCode.NotFound };

    private static Snowflake Id(string text) => Snowflake.TryParse(text, out var id)
        ? id
        : throw new PostImpossibleException($"'{text}' is no id of this platform.");

    private static string Nonce(string key) =>
        key.Length <= Limits.Nonce ? key : Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..Limits.Nonce];
}
