using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>One thing on a sheet.</summary>
internal abstract record Mark(Ink Ink);
