using CrewBot.Storage;
using CrewBot.Storage.Buttons;

namespace CrewBot.Chat.Commands;

/// <summary>What buttons of a crew stand for and can't carry, kept in its book.</summary>
public sealed class ButtonBook(CrewBook book)
{
    /// <summary>Keeps commands.</summary>
    /// <param name="crew">Whose buttons they are.</param>
    /// <param name="commands">Each command by what its button says instead.</param>
    /// <param name="now">From when on they are kept.</param>
    /// <param name="cancellationToken">Gives up before they are kept.</param>
    /// <returns>Whether they are kept; not without a database that can be written.</returns>
    public async Task<bool> TryKeepAsync(
        string crew, IReadOnlyDictionary<string, string> commands, DateTimeOffset now, CancellationToken cancellationToken)
    {
        try
        {
            var database = await book.OpenAsync(cancellationToken);
            await database.WriteAsync(
                crew,
                async session =>
                {
                    var buttons = new ButtonRepository(session);
                    foreach (var (key, command) in commands)
                    {
                        await buttons.KeepAsync(key, command, now);
                    }

                    await buttons.ForgetAsync(now - ButtonRepository.Kept);
                },
                cancellationToken);
            return true;
        }
        catch (StorageException)
        {
            return false;
        }
    }

    /// <summary>The command that a button stands for; null when it is not kept, or no more.</summary>
    public async Task<string?> FindAsync(string crew, string key, DateTimeOffset now, CancellationToken cancellationToken)
    {
        if (book.HoldsNothing)
        {
            return null;
        }

        try
        {
            var database = await book.OpenAsync(cancellationToken);
            return await database.ReadAsync(crew, session => new ButtonRepository(session).FindAsync(key, now), cancellationToken);
        }
        catch (StorageException)
        {
            return null;
        }
    }
}
