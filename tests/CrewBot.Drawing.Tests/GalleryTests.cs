using System.Runtime.CompilerServices;
using CrewBot.Chat.Commands;
using CrewBot.Core.Pictures;
using CrewBot.Drawing.Inks;
using SkiaSharp;

namespace CrewBot.Drawing.Tests;

/// <summary>The pictures in the documentation. <c>CREWBOT_WRITE_EXPECTED=1</c> draws them anew.</summary>
public sealed class GalleryTests(PictureFixture pictures, PlayedCrew crew)
{
    public static TheoryData<string, string> Lines => new()
    {
        { "walleye", "/rig plan species:walleye depth:24ft mood:negative" },
        { "pike", "/rig plan species:pike depth:10ft presentation:\"dead bait\"" },
        { "lake-trout", "/rig plan species:\"lake trout\" depth:80ft" },
        { "perch", "/rig plan species:perch depth:18ft" },
        { "pair", "/rig pair species:walleye depth:24ft" },
        { "check", "/rig check mainline:\"fluorocarbon 4lb\" leader:\"braid 30lb 6in\" join:\"double uni\" knot:\"improved clinch\" lure:\"3/8oz jigging spoon\" hook:4 species:pike" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public async Task Gallery_Rig_IsThereInBothThemes(string name, string line)
    {
        var picture = await pictures.AskAsync(line);

        Assert.NotNull(picture);
        Check(name, picture);
    }

    [Theory]
    [InlineData("derby-race")]
    [InlineData("learning")]
    [InlineData("seating")]
    [InlineData("pocket-card")]
    public void Gallery_PlayedCrew_IsThereInBothThemes(string name) => Check(name, crew.Pictures[name]);

    [Fact]
    public async Task Gallery_IceBoard_IsThereInBothThemes() =>
        Check("ice-board", await IceDays.BoardAsync(CrewUnits.Customary, TestContext.Current.CancellationToken));

    [Theory]
    [InlineData(CrewUnits.Customary)]
    [InlineData(CrewUnits.Metric)]
    public async Task LayOut_IceBoardOfRealReports_IsLegibleInsideAndApart(CrewUnits units) =>
        Assert.Empty(SheetChecks.FaultsOf(Illustrator.LayOut(await IceDays.BoardAsync(units, TestContext.Current.CancellationToken))));

    private static void Check(string name, PictureData picture)
    {
        foreach (var theme in (Theme[])[Theme.Light, Theme.Dark])
        {
            var drawn = Illustrator.Draw(picture, theme);
            var path = Path.Combine(Gallery(), $"{name}-{theme.Name}.png");
            if (Environment.GetEnvironmentVariable("CREWBOT_WRITE_EXPECTED") == "1")
            {
                Directory.CreateDirectory(Gallery());
                File.WriteAllBytes(path, drawn);
            }

            // Another processor may smooth an edge otherwise, so the stored picture is compared by what it measures.
            using var stored = SKBitmap.Decode(path);
            using var now = SKBitmap.Decode(drawn);
            Assert.True(stored is not null, $"{path} is missing: draw the gallery anew.");
            Assert.Equal((now.Width, now.Height), (stored.Width, stored.Height));
            Assert.True(drawn.Length < 60_000, $"{name} takes {drawn.Length} bytes.");
        }
    }

    private static string Gallery([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../docs/pictures"));
}
