namespace CrewBot.Worker.Configuration;

/// <summary>What the process was started for.</summary>
/// <param name="Identity">Who speaks.</param>
/// <param name="ConfigFile">The configuration file; null for the one beside the program, if any.</param>
/// <param name="Say">The one command to answer; null to open a room.</param>
/// <param name="SelfCheck">Look at the surroundings instead, and say what is wrong with them.</param>
internal sealed record ProcessArguments(Identity Identity, string? ConfigFile, SayArguments? Say, bool SelfCheck = false)
{
    /// <summary>The folder that files of replies are written to.</summary>
    public required string FilesFolder { get; init; }

    /// <summary>The folder that pictures are written to, and every answer's picture is drawn; null to draw only what is asked for.</summary>
    public string? PicturesFolder { get; init; }

    /// <summary>Fill a new database with an invented winter instead.</summary>
    public bool Demo { get; init; }

    /// <summary>A copy to make of the database or to put back instead; null for none.</summary>
    public CopyArguments? Copy { get; init; }
}
