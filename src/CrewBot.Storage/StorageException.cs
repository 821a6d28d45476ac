namespace CrewBot.Storage;

/// <summary>The database can't do what was asked, for a reason outside the program. Nothing was changed.</summary>
/// <param name="message">What is wrong and what to do, in one line fit for a person.</param>
/// <param name="cause">What the database said; null when it was found out before asking.</param>
public sealed class StorageException(string message, Exception? cause = null) : Exception(message, cause);
