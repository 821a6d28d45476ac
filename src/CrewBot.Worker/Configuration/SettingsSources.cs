using Microsoft.Extensions.Configuration;

namespace CrewBot.Worker.Configuration;

/// <summary>
/// Where configuration comes from, each source over the one before: beside the program, the developer's user secrets, the named
/// file, the environment.
/// </summary>
internal static class SettingsSources
{
    public const string Section = "CrewBot";

    public const string BesideProgram = "appsettings.json";
    private const string VariablePrefix = "CREWBOT_";

    // As everywhere in .NET, secrets of the user are for whoever works on the program: a service and the tests see none.
    private const string EnvironmentName = "DOTNET_ENVIRONMENT";
    private const string Development = "Development";
    private const string SecretsId = "crewbot";

    /// <summary>Reads all sources.</summary>
    /// <exception cref="InvalidDataException">A file is not JSON.</exception>
    /// <exception cref="IOException">A file can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be read.</exception>
    public static IConfigurationRoot Read(string? file, IReadOnlyDictionary<string, string> environment)
    {
        var builder = new ConfigurationBuilder()
            .AddJsonFile(Path.Combine(AppContext.BaseDirectory, BesideProgram), optional: true, reloadOnChange: false);
        if (environment.GetValueOrDefault(EnvironmentName) is Development)
        {
            builder.AddUserSecrets(SecretsId, reloadOnChange: false);
        }

        if (file is not null)
        {
            builder.AddJsonFile(Path.GetFullPath(file), optional: false, reloadOnChange: false);
        }

        return builder.AddInMemoryCollection(Variables(environment)).Build();
    }

    /// <summary>The folder of the file that a key's value comes from; the current one when it comes from the environment.</summary>
    public static string FolderOf(IConfigurationRoot configuration, string key) =>
        configuration.Providers.Reverse().First(provider => provider.TryGet(key, out _)) is FileConfigurationProvider { Source: var source }
            && source.FileProvider?.GetFileInfo(source.Path!).PhysicalPath is { } path
            ? Path.GetDirectoryName(path)!
            : Directory.GetCurrentDirectory();

    // CREWBOT_DISCORD__TOKEN stands for CrewBot:Discord:Token.
    private static IEnumerable<KeyValuePair<string, string?>> Variables(IReadOnlyDictionary<string, string> environment) =>
        environment
            .Where(variable => variable.Key.StartsWith(VariablePrefix, StringComparison.OrdinalIgnoreCase))
            .Select(variable => KeyValuePair.Create(
                Section + ':' + variable.Key[VariablePrefix.Length..].Replace("__", ":", StringComparison.Ordinal), (string?)variable.Value));
}
