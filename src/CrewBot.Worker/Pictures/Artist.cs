using CrewBot.Core.Pictures;
using CrewBot.Drawing;
using CrewBot.Drawing.Inks;

namespace CrewBot.Worker.Pictures;

/// <summary>The only place that names the drawing: its libraries are loaded when the first picture is asked for.</summary>
internal static class Artist
{
    /// <summary>Draws a picture.</summary>
    /// <returns>A PNG file.</returns>
    public static byte[] Draw(PictureData picture, bool byNight) => Illustrator.Draw(picture, byNight ? Theme.Dark : Theme.Light);
}
