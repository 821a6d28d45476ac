using CrewBot.Storage;
using CrewBot.Storage.Connections;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Configuration;

/// <summary>Makes a copy of the database, or puts one back.</summary>
internal sealed class CopyOnce(Settings settings, Surroundings surroundings)
{
    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(CopyArguments copy)
    {
        if (settings.Database is not { } database)
        {
            surroundings.Error.WriteLine("There is no place for a database: set CrewBot:Database to the path of a file.");
            return ExitCode.Unusable;
        }

        try
        {
            await (copy.Restores
                ? DatabaseCopies.RestoreAsync(copy.File, database, copy.Force)
                : DatabaseCopies.BackUpAsync(database, copy.File));
        }
        catch (StorageException refused)
        {
            surroundings.Error.WriteLine(SafeText.Of(refused.Message));
            return ExitCode.Refused;
        }

        surroundings.Output.WriteLine(SafeText.Of(copy.Restores
            ? $"{copy.File} is checked and in the place of {database}."
            : $"{database} is copied to {copy.File}, and the copy is checked."));
        return ExitCode.Answered;
    }
}
