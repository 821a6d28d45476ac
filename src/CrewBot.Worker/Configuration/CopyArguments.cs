namespace CrewBot.Worker.Configuration;

/// <summary>A copy to make of the database, or to put back.</summary>
/// <param name="File">The whole path of the copy.</param>
/// <param name="Restores">Put it back; otherwise make it.</param>
/// <param name="Force">Replace a database that is there.</param>
internal sealed record CopyArguments(string File, bool Restores, bool Force);
