using UnitsNet;

namespace CrewBot.Chat.Lines;

/// <summary>What a spool is rated to hold: a length of line of one diameter.</summary>
public sealed record SpoolSpec(Length Length, Length Diameter);
