using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>
/// Puts the sessions by at a clean end, so that the next start takes them up and what was written in between is answered. Whatever
/// is wrong with the file, a new session starts as it would without one.
/// </summary>
/// <param name="path">The file; null to put nothing by.</param>
/// <param name="token">The bot's secret. Without it nobody can take a session up.</param>
/// <param name="clock">Now.</param>
/// <param name="log">Notes what could not be put by.</param>
internal sealed class SessionFile(string? path, BotToken token, TimeProvider clock, ILogger<SessionFile> log)
{
    // "A session lives a few minutes": taking up an older one would only cost the time to be refused.
    private static readonly TimeSpan StaysGood = TimeSpan.FromMinutes(5);

    /// <summary>The sessions by their shards, and their end as a file: a process that dies must not leave them to be taken up again.</summary>
    public IReadOnlyDictionary<ShardId, GatewaySession> Take()
    {
        if (path is null || !File.Exists(path))
        {
            return new Dictionary<ShardId, GatewaySession>();
        }

        try
        {
            var saved = JsonSerializer.Deserialize(File.ReadAllBytes(path), WireJson.Default.SavedSessions);
            File.Delete(path);
            return saved is not null && saved.Bot == NameOf(token) && (clock.GetUtcNow() - saved.At).Duration() < StaysGood
                ? saved.Sessions.ToDictionary(session => new ShardId(session.Shard, session.Count), GatewaySession.Of)
                : new Dictionary<ShardId, GatewaySession>();
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException or JsonException or ArgumentException)
        {
            log.LogInformation("The session of the last run is not taken up: {Reason}", unreadable.Message);
            return new Dictionary<ShardId, GatewaySession>();
        }
    }

    /// <summary>Puts by those that can be taken up at a place of their own.</summary>
    public void Put(IEnumerable<KeyValuePair<ShardId, GatewaySession>> sessions)
    {
        SavedSession[] good =
        [
            .. sessions
                .Where(pair => pair.Value is { CanResume: true, ResumeAddress: not null })
                .Select(pair => new SavedSession(
                    pair.Key.Number, pair.Key.Count, pair.Value.Id!, pair.Value.ResumeAddress!.AbsoluteUri, pair.Value.Sequence!.Value)),
        ];
        if (path is null || good.Length == 0)
        {
            return;
        }

        try
        {
            Write(path, JsonSerializer.SerializeToUtf8Bytes(new SavedSessions(NameOf(token), clock.GetUtcNow(), good), WireJson.Default.SavedSessions));
        }
        catch (Exception unwritable) when (unwritable is IOException or UnauthorizedAccessException)
        {
            log.LogInformation("The session is not put by for the next start: {Reason}", unwritable.Message);
        }
    }

    private static void Write(string path, byte[] content)
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using var file = new FileStream(path, options);
        file.Write(content);
    }

    // Says which bot it is and nothing of its secret.
    private static string NameOf(BotToken token) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(token.Value)).AsSpan(0, 8));
}
