using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Chat.Boxes;

/// <summary>What of a box a rig is made with.</summary>
/// <param name="Tackle">What is tied.</param>
/// <param name="Hole">The widest hole that its augers drill; null when none says.</param>
internal sealed record OwnTackle(Tackle Tackle, Length? Hole);
