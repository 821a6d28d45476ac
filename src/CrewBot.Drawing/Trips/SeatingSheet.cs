using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Trips;

/// <summary>Lays out shelters, each under its roof, with one place a seat.</summary>
internal static class SeatingSheet
{
    private const float Roof = 46;
    private const float Inside = 26;
    private const float SeatHeight = 50;
    private const float SeatGap = 12;
    private const float SeatPadding = 18;
    private const float Between = 30;
    private const string Free = "free";

    public static Sheet LayOut(SeatingPicture picture)
    {
        var sheet = new Sheet();
        var top = sheet.Title(picture.Title) + 4;
        foreach (var shelter in picture.Shelters)
        {
            top = Shelter(sheet, shelter, top) + Between;
        }

        sheet.Height = top - Between + Sheet.Margin;
        return sheet;
    }

    private static float Shelter(Sheet sheet, PicturedShelter shelter, float top)
    {
        var (left, right) = (Sheet.Margin, Sheet.Width - Sheet.Margin);
        var eaves = top + Roof;
        var below = sheet.Write(shelter.Name, left + Inside, eaves + 12, right - left - (2 * Inside) - 120, Sheet.PlainText, Weight.SemiBold);
        sheet.WriteRight($"{shelter.People.Count} of {shelter.Seats}", right - Inside, eaves + 14, 110, Sheet.SmallText, ink: Ink.Quiet);
        var bottom = Seats(sheet, shelter, left + Inside, right - Inside, below + 10) + Inside;
        sheet.Add(new StrokeMark([(left, bottom), (left, eaves), ((left + right) / 2, top), (right, eaves), (right, bottom), (left, bottom)], 4, Ink.Tackle));
        return bottom;
    }

    private static float Seats(Sheet sheet, PicturedShelter shelter, float left, float right, float top)
    {
        var x = left;
        foreach (var person in shelter.People.Concat(Enumerable.Repeat<string?>(null, shelter.Seats - shelter.People.Count)))
        {
            var name = Lettering.OneLine(person ?? Free, Sheet.SmallText, Weight.Regular, right - left - (2 * SeatPadding));
            var width = Lettering.Width(name, Sheet.SmallText, Weight.Regular) + (2 * SeatPadding);
            if (x + width > right)
            {
                (x, top) = (left, top + SeatHeight + SeatGap);
            }

            Seat(sheet, name, new Box(x, top, x + width, top + SeatHeight), isTaken: person is not null);
            x += width + SeatGap;
        }

        return top + SeatHeight;
    }

    private static void Seat(Sheet sheet, string name, Box box, bool isTaken)
    {
        var (ink, on) = isTaken ? (Ink.Text, Ink.Water) : (Ink.Quiet, Ink.Paper);
        sheet.Add(new FillMark(box, box.Height / 2, isTaken ? Ink.Water : Ink.Rule));
        if (!isTaken)
        {
            // A free seat is a rim only.
            sheet.Add(new FillMark(new Box(box.Left + 3, box.Top + 3, box.Right - 3, box.Bottom - 3), (box.Height / 2) - 3, Ink.Paper));
        }

        sheet.WriteMiddle(name, (box.Left + box.Right) / 2, box.Top + ((box.Height - (Sheet.SmallText * Lettering.LineHeight)) / 2), box.Width, Sheet.SmallText, ink: ink, on: on);
    }
}
