using CrewBot.Core.Pictures;
using CrewBot.Drawing.Charts;
using CrewBot.Drawing.Ice;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Rigs;
using CrewBot.Drawing.Sheets;
using CrewBot.Drawing.Trips;

namespace CrewBot.Drawing;

/// <summary>Draws pictures.</summary>
public static class Illustrator
{
    /// <summary>Draws one picture.</summary>
    /// <param name="picture">What it shows.</param>
    /// <param name="theme">Its colours.</param>
    /// <returns>A PNG file, 720 pixels wide.</returns>
    public static byte[] Draw(PictureData picture, Theme theme) => Painter.Paint(LayOut(picture), theme);

    /// <summary>Lays a picture out.</summary>
    internal static Sheet LayOut(PictureData picture) => picture switch
    {
        RigPicture rig => RigSheet.LayOut(rig),
        RacePicture race => RaceSheet.LayOut(race),
        IntervalPicture intervals => IntervalSheet.LayOut(intervals),
        SeatingPicture seating => SeatingSheet.LayOut(seating),
        IceBoardPicture ice => IceBoardSheet.LayOut(ice),
        CardPicture card => CardSheet.LayOut(card),
        _ => throw new ArgumentException($"Nobody draws a {picture.GetType().Name}.", nameof(picture)),
    };
}
