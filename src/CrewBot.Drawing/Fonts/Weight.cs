namespace CrewBot.Drawing.Fonts;

/// <summary>How heavy letters are.</summary>
internal enum Weight
{
    Regular,
    SemiBold,
}
