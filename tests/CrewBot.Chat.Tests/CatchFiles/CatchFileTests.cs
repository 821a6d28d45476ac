using System.Text;
using System.Text.Json;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.CatchFiles;

public sealed class CatchFileTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Export_Csv_WritesNumbersAsTheAnglerUsedThem()
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg");
        await _room.SayAsync("catch log species:walleye length:\"12 1/4in\" weight:\"10oz\" depth:7.3m fate:released note:\"soft bite, left line\"");

        var lines = Text(await _room.SayAsync("catch export")).Split("\r\n");

        Assert.Equal(
            "\uFEFFnumber,angler,angler_id,species,caught_at,length,length_unit,weight,weight_unit,girth,girth_unit,depth,depth_unit,water,spot,presentation,lure,mood,line,fate,note,photo,photo_sha256,logged_at,voided_at",
            lines[0]);
        Assert.Equal(
            "1,Ana,Ana,walleye,2027-01-16T14:00:00-06:00,12.25,in,10,oz,,,7.3,m,,,,,,,released,\"soft bite, left line\",,,2027-01-16T20:00:00Z,", lines[1]);
    }

    [Fact]
    public async Task Export_Columns_AreAllInTheDocs()
    {
        await _room.SayAsync("log walleye 20in");
        var page = await StoredText.ReadAsync("docs/catch-file.md");

        Assert.All(Text(await _room.SayAsync("catch export")).Split("\r\n")[0].TrimStart('\uFEFF').Split(','), column => Assert.Contains($"`{column}`", page, StringComparison.Ordinal));
    }

    // The characters of OWASP's "CSV Injection": a cell that starts with one of them is a formula to a spreadsheet.
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("'quoted", "''quoted")]
    [InlineData("a=1", "a=1")]
    public async Task Export_NoteThatLooksLikeAFormula_IsNeutralised(string note, string cell)
    {
        await _room.SayAsync($"catch log species:walleye note:\"{note}\"");

        Assert.Contains($",{cell},,,2027", Text(await _room.SayAsync("catch export")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_Json_HoldsNumbersAsNumbers()
    {
        await _room.SayAsync("catch log species:walleye length:22.25in");

        using var json = JsonDocument.Parse(Text(await _room.SayAsync("catch export format:json")));

        var fish = Assert.Single(json.RootElement.EnumerateArray());
        Assert.Equal(22.25m, fish.GetProperty("length").GetDecimal());
        Assert.False(fish.TryGetProperty("weight", out _));
    }

    [Fact]
    public async Task Import_WithoutConfirm_SaysWhatItWouldDoAndWritesNothing()
    {
        Give("species,caught_at,length,water\nwalleye,2027-01-15 14:20,22 1/4 in,Loon Basin\nwalley3,2027-01-15 14:20,,\nperch,2027-01-15 14:21,9,\n");

        var reply = await _room.SayAsync("catch import file:https://files.example/old.csv");

        Assert.Equal("Nothing is written yet: 1 fish would be added, 2 refused", reply.Headline);
        Assert.Collection(
            reply.Lines,
            line => Assert.StartsWith("line 3: species: 'walley3' is not known. Nearest: walleye", line, StringComparison.Ordinal),
            line => Assert.Equal("line 4: length '9' has no unit: give it in length_unit.", line),
            line => Assert.Equal("New water or spot: Loon Basin.", line),
            line => Assert.Equal("Send it again with confirm:yes to add them.", line));
        Assert.NotNull((await _room.SayAsync("catch list")).Problem);
        Assert.Equal("/catch import file:https://files.example/old.csv confirm:yes", reply.Actions[0].Command);
    }

    [Fact]
    public async Task Import_Confirmed_AddsWhatIsRightForTheImporterWhereNobodyIsNamed()
    {
        Give("species;caught_at;length;length_unit;angler\nwalleye;2027-01-15 14:20;22,5;in;\nperch;2027-01-15 14:20;9;in;Bo\n");

        var reply = await _room.SayAsync("catch import file:https://files.example/old.csv confirm:yes");

        Assert.Equal("Added 2 fish to the log", reply.Headline);
        Assert.Equal(
            ["#1 walleye, 22.5 in (57.2 cm), Ana, Fri 15 Jan 14:20", "#2 yellow perch, 9 in (22.9 cm), Bo, Fri 15 Jan 14:20"],
            (await _room.SayAsync("catch list")).Lines.Order());
        Assert.Contains("in the log already", (await _room.SayAsync("catch import file:https://files.example/old.csv")).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("species,length\n", "has no column caught_at")]
    [InlineData("species,caught_at,species\n", "names 'species' twice")]
    public async Task Import_NoCatchFile_IsRefusedInALine(string file, string part)
    {
        Give(file);

        Assert.Contains(part, (await _room.SayAsync("catch import file:https://files.example/old.csv")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("walleye,2027-02-01 10:00,,,", "is still to come")]
    [InlineData("walleye,soon,,,", "caught_at: can't read 'soon'")]
    [InlineData("walleye,2027-01-15 14:20,-3,in,", "length: '-3 in' is outside")]
    [InlineData("walleye,2027-01-15 14:20,5000,m,", "length: '5000 m' is outside")]
    [InlineData("walleye,2027-01-15 14:20,,in,", "length_unit stands without its number")]
    [InlineData("walleye,2027-01-15 14:20,5,lb,", "is a weight, not a fish's length")]
    [InlineData("walleye,2027-01-15 14:20,,,a,b", "6 cells for 5 columns")]
    [InlineData(",2027-01-15 14:20,,,", "species is empty")]
    [InlineData("walleye,2027-01-15 14:20,,,0", "number: '0' is not a number")]
    public async Task Import_RowThatIsWrong_IsRefusedWithItsLineAndReason(string row, string reason)
    {
        Give($"species,caught_at,length,length_unit,number\n{row}\n");

        var reply = await _room.SayAsync("catch import file:https://files.example/old.csv");

        Assert.Equal("Nothing to add, 1 refused.", reply.Headline);
        Assert.StartsWith("line 2: ", reply.Lines[0], StringComparison.Ordinal);
        Assert.Contains(reason, reply.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_HashOfAPhotoThatIsNone_IsRefused()
    {
        Give("species,caught_at,photo_sha256\nwalleye,2027-01-15 14:20,12ab\n");

        var reply = await _room.SayAsync("catch import file:https://files.example/old.csv");

        Assert.Contains("photo_sha256 '12ab' is no SHA-256", reply.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_NumberOfAnotherFish_IsRefused()
    {
        await _room.SayAsync("log walleye 20in");
        Give("number,species,caught_at\n1,perch,2027-01-15 14:20\n7,perch,2027-01-15 14:20\n7,perch,2027-01-15 14:20\n");

        var reply = await _room.SayAsync("catch import file:https://files.example/old.csv");

        Assert.Equal(["line 2: #1 is in the log and says otherwise: leave the number out to add it as another fish.", "line 4: number 7 stands in the file twice."], reply.Lines.Take(2));
    }

    [Fact]
    public async Task Import_ByAMember_IsForAStewardAlone()
    {
        Give("species,caught_at\nperch,2027-01-15 14:20\n");

        Assert.Contains("steward", (await _room.SayAsync("catch import file:https://files.example/old.csv", "Bo", Role.Member)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_SameRequestAgain_AddsOnce()
    {
        Give("species,caught_at\nperch,2027-01-15 14:20\n");
        var first = await _room.SayAsync("catch import file:https://files.example/old.csv confirm:yes", id: "again");
        var second = await _room.SayAsync("catch import file:https://files.example/old.csv confirm:yes", id: "again");

        Assert.Equal(ReplyJson.Write(first), ReplyJson.Write(second));
        Assert.Single((await _room.SayAsync("catch list")).Lines);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private void Give(string file) => _room.File = Encoding.UTF8.GetBytes(file);

    private static string Text(Reply reply) => Encoding.UTF8.GetString(reply.Files.Single().Content.Span);
}
