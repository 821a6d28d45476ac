namespace CrewBot.Chat.Commands;

/// <summary>A command's place in the menu of a person.</summary>
/// <param name="Label">As the menu shows it, in at most 32 characters.</param>
/// <param name="Person">The option that takes the person.</param>
public sealed record PersonMenu(string Label, CommandOption<Person> Person);
