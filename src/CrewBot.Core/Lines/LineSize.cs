using UnitsNet;

namespace CrewBot.Core.Lines;

public sealed record LineSize(Force Test, Length Diameter);
