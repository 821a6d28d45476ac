using System.Security.Cryptography;
using System.Text;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>Posts to channels and threads with the bot's own right.</summary>
internal sealed class ChannelPosts(DiscordApi api, CardWriter cards) : IChatPost
{
    private const int ThreadIsThere = 160004;
    private const int UnknownMessage = 10008;
    private const int ThreeDays = 4320;

    public async Task<Posted> PostAsync(string place, string key, Reply reply, CancellationToken cancellationToken)
    {
        var card = cards.Write(reply, CardPurpose.Shared);
        var message = await api.CreateMessageAsync(Id(place), card.Body, Nonce(key), card.Files, cancellationToken);
        return new Posted(place, message.Id?.ToString() ?? throw new DiscordApiException(
            Routes.CreateMessage(Id(place)), "gave the message no id"));
    }

    public Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken)
    {
        var card = cards.Write(reply, CardPurpose.Shared);
        return api.EditMessageAsync(Id(posted.Place), Id(posted.Id), card.Body, card.Files, cancellationToken);
    }

    public async Task DeleteAsync(Posted posted, CancellationToken cancellationToken)
    {
        try
        {
            await api.DeleteMessageAsync(Id(posted.Place), Id(posted.Id), cancellationToken);
        }
        catch (DiscordApiException gone) when (gone.Code == UnknownMessage)
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

    private static Snowflake Id(string text) => Snowflake.TryParse(text, out var id)
        ? id
        : throw new ArgumentException($"'{text}' is no id of this platform.", nameof(text));

    private static string Nonce(string key) =>
        key.Length <= Limits.Nonce ? key : Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..Limits.Nonce];
}
