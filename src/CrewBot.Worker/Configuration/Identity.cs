using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Configuration;

/// <summary>Who speaks at this terminal.</summary>
internal sealed record Identity(string Crew, string Member, Role Role);
