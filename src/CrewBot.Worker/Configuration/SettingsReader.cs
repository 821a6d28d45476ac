using System.Globalization;
using CrewBot.Chat.Commands;
using Microsoft.Extensions.Configuration;

namespace CrewBot.Worker.Configuration;

/// <summary>Reads the configuration and checks every key of ours.</summary>
internal static class SettingsReader
{
    private const string Units = SettingsSources.Section + ":Units";
    private const string KnowledgeFile = SettingsSources.Section + ":KnowledgeFile";

    private const string Database = SettingsSources.Section + ":Database";

    private const string PhotoFolder = SettingsSources.Section + ":PhotoFolder";
    private const string PhotoMegabytes = SettingsSources.Section + ":PhotoMegabytes";
    private const int MostMegabytes = 1_000_000;

    private static readonly string[] Keys = [Units, KnowledgeFile, Database, PhotoFolder, PhotoMegabytes, .. DiscordSettingsReader.Keys];

    /// <summary>Reads the configuration.</summary>
    /// <param name="file">A file named on the command line, if any.</param>
    /// <param name="environment">The environment variables.</param>
    /// <returns>The settings, or every fault.</returns>
    public static SettingsReading Read(string? file, IReadOnlyDictionary<string, string> environment)
    {
        IConfigurationRoot configuration;
        try
        {
            configuration = SettingsSources.Read(file, environment);
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return new SettingsReading(null, [FaultOf(file, unreadable)]);
        }

        var faults = UnknownKeys(configuration).ToList();
        var units = ReadUnits(configuration[Units], faults);
        var database = ReadPlace(configuration, Database, "a file", faults) ?? UserFolders.StateOf(environment, "crew.db");
        var settings = new Settings
        {
            Units = units ?? CrewUnits.Customary,
            KnowledgeFile = ReadPath(configuration, KnowledgeFile, faults),
            PhotoFolder = ReadPlace(configuration, PhotoFolder, "a folder", faults),
            PhotoMegabytes = ReadMegabytes(configuration[PhotoMegabytes], faults),
            Database = database,
            Discord = new DiscordSettingsReader(configuration, faults).Read(units, database),
        };
        return new SettingsReading(faults.Count == 0 ? settings : null, faults);
    }

    private static CrewUnits? ReadUnits(string? value, List<string> faults)
    {
        switch (value?.ToLowerInvariant())
        {
            case null:
                return null;
            case "customary":
                return CrewUnits.Customary;
            case "metric":
                return CrewUnits.Metric;
            default:
                faults.Add($"{Units} is {Quoting.Quote(value)}: write customary or metric.");
                return null;
        }
    }

    private static int ReadMegabytes(string? value, List<string> faults)
    {
        if (value is null)
        {
            return new Settings().PhotoMegabytes;
        }

        if (int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var megabytes) && megabytes is > 0 and <= MostMegabytes)
        {
            return megabytes;
        }

        faults.Add($"{PhotoMegabytes} is {Quoting.Quote(value)}: write a whole number from 1 to {MostMegabytes}.");
        return 0;
    }

    // What lies there need not be there yet: it is made at the first use.
    private static string? ReadPlace(IConfigurationRoot configuration, string key, string what, List<string> faults)
    {
        if (configuration[key] is not { } value)
        {
            return null;
        }

        if (string.IsNullOrWhiteSpace(value) || value.Contains('\0', StringComparison.Ordinal) || value.Contains(';', StringComparison.Ordinal))
        {
            faults.Add($"{key} is {Quoting.Quote(value)}: write the path of {what}, or leave the key out.");
            return null;
        }

        return Path.GetFullPath(Path.Combine(SettingsSources.FolderOf(configuration, key), value));
    }

    private static string? ReadPath(IConfigurationRoot configuration, string key, List<string> faults)
    {
        if (configuration[key] is not { } value)
        {
            return null;
        }

        if (string.IsNullOrWhiteSpace(value) || value.Contains('\0', StringComparison.Ordinal))
        {
            faults.Add($"{key} is {Quoting.Quote(value)}: write the path of a file, or leave the key out.");
            return null;
        }

        var path = Path.Combine(SettingsSources.FolderOf(configuration, key), value);
        if (!File.Exists(path))
        {
            faults.Add($"{key} is {Quoting.Quote(value)}: there is no such file; write a path relative to the configuration file.");
        }

        return path;
    }

    // The value of a key that is not known may be a secret under a misspelt name: it is not repeated.
    private static IEnumerable<string> UnknownKeys(IConfigurationRoot configuration) => configuration
        .GetSection(SettingsSources.Section)
        .AsEnumerable()
        .Where(entry => entry.Value is not null && !Keys.Contains(entry.Key, StringComparer.OrdinalIgnoreCase))
        .OrderBy(entry => entry.Key, StringComparer.Ordinal)
        .Select(entry => $"{entry.Key}: there is no such key; nearest is {Nearest.To(entry.Key, Keys, 1)[0]}.");

    private static string FaultOf(string? file, Exception unreadable)
    {
        var reason = unreadable switch
        {
            FileNotFoundException or DirectoryNotFoundException => "there is no such file; write the path of one",
            InvalidDataException { InnerException.InnerException: System.Text.Json.JsonException json } =>
                $"not JSON at line {json.LineNumber + 1}; mend it there",
            InvalidDataException => "not a JSON object of settings",
            _ => "it can't be read; check what it is and who may read it",
        };
        return $"{file ?? SettingsSources.BesideProgram}: {reason}.";
    }
}
