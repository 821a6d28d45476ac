using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Catches;

public sealed class MomentTests
{
    private static readonly DateTimeOffset Now = new(2027, 1, 16, 9, 0, 0, TimeSpan.FromHours(-6));

    [Theory]
    [InlineData("2027-01-16T07:05:00-06:00", "07:05")]
    [InlineData("2027-01-16T01:00:00-06:00", "01:00")]
    [InlineData("2027-01-15T23:59:00-06:00", "Fri 15 Jan 23:59")]
    [InlineData("2027-01-23T15:00:00-06:00", "Sat 23 Jan 15:00")]
    [InlineData("2026-03-01T15:00:00-06:00", "2026-03-01 15:00")]
    [InlineData("2027-12-01T15:00:00-06:00", "2027-12-01 15:00")]
    public void Show_NearAndFar_NamesTheDayWhereItIsNeeded(string time, string shown) =>
        Assert.Equal(shown, Moment.Show(DateTimeOffset.Parse(time, System.Globalization.CultureInfo.InvariantCulture), Now));

    [Theory]
    [InlineData("just now", 0)]
    [InlineData("10 min ago", 10)]
    [InlineData("20m ago", 20)]
    [InlineData("2 hrs ago", 120)]
    [InlineData("1 hr ago", 60)]
    [InlineData("1.5 hours ago", 90)]
    [InlineData("1d ago", 1440)]
    public void Read_TimeAgo_IsSoManyMinutes(string text, double minutes) =>
        Assert.Equal(Now.AddMinutes(-minutes), new MomentReader().Read(text, CrewUnits.Customary).Value!.From(Now, TimeZoneInfo.Utc));

    [Theory]
    [InlineData("7:05", 7, 5)]
    [InlineData("7am", 7, 0)]
    [InlineData("7 am", 7, 0)]
    [InlineData("7:30 PM", 19, 30)]
    [InlineData("12am", 0, 0)]
    [InlineData("today 12pm", 12, 0)]
    [InlineData("at 7:05", 7, 5)]
    [InlineData("noon", 12, 0)]
    [InlineData("midnight", 0, 0)]
    public void Read_TimeOfDay_IsReadByEitherClock(string text, int hour, int minute) =>
        Assert.Equal(new TimeOnly(hour, minute), TimeOnly.FromDateTime(new MomentReader().Read(text, CrewUnits.Customary).Value!.From(Now, TimeZoneInfo.Utc).UtcDateTime));

    [Theory]
    [InlineData("this morning 9:30", "2027-01-16 09:30")]
    [InlineData("9:30 this morning", "2027-01-16 09:30")]
    [InlineData("at 7 this morning", "2027-01-16 07:00")]
    [InlineData("12:30 this morning", "2027-01-16 00:30")]
    [InlineData("This Afternoon at 2:15", "2027-01-16 14:15")]
    [InlineData("noon this afternoon", "2027-01-16 12:00")]
    [InlineData("4 pm this evening", "2027-01-16 16:00")]
    [InlineData("tonight 19:30", "2027-01-16 19:30")]
    [InlineData("yesterday morning 6:45", "2027-01-15 06:45")]
    [InlineData("at 4 pm yesterday afternoon", "2027-01-15 16:00")]
    [InlineData("last night at 10", "2027-01-15 22:00")]
    [InlineData("tomorrow morning at 7", "2027-01-17 07:00")]
    public void Read_PartOfDay_TellsWhichHalfAClockMeans(string text, string meant) =>
        Assert.Equal(meant, new MomentReader().Read(text, CrewUnits.Customary).Value!.From(Now, TimeZoneInfo.CreateCustomTimeZone("here", Now.Offset, null, null))
            .ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture));

    [Theory]
    [InlineData("7")]
    [InlineData("this morning")]
    [InlineData("this morning 9:30 pm")]
    [InlineData("8 this morning")]
    [InlineData("this afternoon at 8")]
    [InlineData("last night 1:30")]
    [InlineData("this morning 9:30 this morning")]
    [InlineData("13pm")]
    [InlineData("am")]
    [InlineData("yesterday pm")]
    [InlineData("yesterday midnight")]
    [InlineData("yesterday")]
    public void Read_NoTimeOfDay_IsRefused(string text) => Assert.NotNull(new MomentReader().Read(text, CrewUnits.Customary).Fault);
}
