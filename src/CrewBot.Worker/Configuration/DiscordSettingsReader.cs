using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Discord;
using Microsoft.Extensions.Configuration;

namespace CrewBot.Worker.Configuration;

/// <summary>Reads the keys of the Discord room. The token is never repeated, whatever is wrong with it.</summary>
internal sealed class DiscordSettingsReader(IConfigurationRoot configuration, List<string> faults)
{
    private const string Section = SettingsSources.Section + ":Discord";
    private const string Token = Section + ":Token";
    private const string TokenFile = Section + ":TokenFile";
    private const string ApiBaseAddress = Section + ":ApiBaseAddress";
    private const string TestGuild = Section + ":TestGuild";
    private const string ShardCount = Section + ":ShardCount";
    private const string SessionFile = "-session";
    private const string ShardIds = Section + ":ShardIds";

    public static readonly IReadOnlyList<string> Keys = [Token, TokenFile, ApiBaseAddress, TestGuild, ShardCount, ShardIds];

    /// <summary>The options; null when there is no token, or a fault was added.</summary>
    /// <param name="units">What units callers speak in; null when nobody said.</param>
    /// <param name="database">The database, beside which the session is put by; null where there is no place for one.</param>
    public DiscordOptions? Read(CrewUnits? units, string? database)
    {
        var count = ReadShardCount();
        var ids = ReadShardIds(count);
        var guild = ReadGuild();
        var address = ReadAddress();
        return ReadToken() is { } token
            ? new DiscordOptions
            {
                Token = token,
                ApiBaseAddress = address,
                ShardCount = count,
                ShardIds = ids,
                TestGuildId = guild,
                SessionFile = database is null ? null : database + SessionFile,
                Units = units,
            }
            : null;
    }

    private BotToken? ReadToken()
    {
        var (given, file) = (configuration[Token], configuration[TokenFile]);
        if (given is not null && file is not null)
        {
            faults.Add($"{Token} and {TokenFile} are both given: keep one.");
            return null;
        }

        try
        {
            var text = file is null
                ? given
                : File.ReadAllText(Path.Combine(SettingsSources.FolderOf(configuration, TokenFile), file));
            return text is null ? null : new BotToken(text);
        }
        catch (ArgumentException)
        {
            faults.Add($"{(file is null ? Token : TokenFile)} holds no token: write it on one line, without the word Bot, or leave the key out.");
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            faults.Add($"{TokenFile} is {Quoting.Quote(file!)}: it can't be read; write the path of a file that CrewBot may read.");
        }

        return null;
    }

    private Uri ReadAddress()
    {
        var text = configuration[ApiBaseAddress] ?? "https://discord.com/api/v10/";
        if (Uri.TryCreate(text.EndsWith('/') ? text : text + '/', UriKind.Absolute, out var address)
            && address.Scheme is "https" or "http")
        {
            return address;
        }

        faults.Add($"{ApiBaseAddress} is {Quoting.Quote(text)}: write an address such as https://discord.com/api/v10/.");
        return new Uri("https://discord.com/api/v10/");
    }

    private string? ReadGuild()
    {
        var text = configuration[TestGuild];
        if (text is null || ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out _))
        {
            return text;
        }

        faults.Add($"{TestGuild} is {Quoting.Quote(text)}: write the server's id, a number of about 19 digits.");
        return null;
    }

    private int? ReadShardCount()
    {
        var text = configuration[ShardCount];
        if (text is null)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0)
        {
            return count;
        }

        faults.Add($"{ShardCount} is {Quoting.Quote(text)}: write a whole number from 1, or leave the key out.");
        return null;
    }

    private List<int>? ReadShardIds(int? count)
    {
        var text = configuration[ShardIds];
        if (text is null)
        {
            return null;
        }

        var ids = text.Split(',', StringSplitOptions.TrimEntries)
            .Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : -1)
            .ToList();
        if (count is not null && ids.All(id => id >= 0 && id < count) && ids.Distinct().Count() == ids.Count)
        {
            return ids;
        }

        faults.Add($"{ShardIds} is {Quoting.Quote(text)}: write numbers below {ShardCount}, such as 0,1, and give {ShardCount} too.");
        return null;
    }
}
