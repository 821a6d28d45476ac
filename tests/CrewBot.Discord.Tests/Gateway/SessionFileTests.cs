using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class SessionFileTests : IDisposable
{
    private static readonly ShardId Shard = new(0, 1);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");
    private readonly FakeTimeProvider _clock = new();
    private readonly LogBook _logs = new();

    private string Place => Path.Combine(_folder.FullName, "session");

    public void Dispose()
    {
        _logs.Dispose();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public void Take_PutByJustNow_GivesItOnce()
    {
        Of("token").Put([new(Shard, SessionOf("s-1", "wss://resume.invalid", 17))]);
        var taken = Of("token").Take()[Shard];

        Assert.Equal(("s-1", new Uri("wss://resume.invalid"), 17), (taken.Id, taken.ResumeAddress, taken.Sequence));
        Assert.Empty(Of("token").Take());
    }

    [Fact]
    public void Take_MinutesLater_GivesNothing()
    {
        Of("token").Put([new(Shard, SessionOf("s-1", "wss://resume.invalid", 17))]);
        _clock.Advance(TimeSpan.FromMinutes(5));

        Assert.Empty(Of("token").Take());
    }

    [Fact]
    public void Take_OfAnotherBot_GivesNothing()
    {
        Of("token").Put([new(Shard, SessionOf("s-1", "wss://resume.invalid", 17))]);

        Assert.Empty(Of("another").Take());
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("not a file of ours")]
    [InlineData("""{"bot":null,"at":"2027-01-16T14:00:00Z","sessions":null}""")]
    public void Take_AnyFile_GivesNothingAndThrowsNothing(string content)
    {
        File.WriteAllText(Place, content);

        Assert.Empty(Of("token").Take());
    }

    [Fact]
    public void Put_NothingToTakeUp_MakesNoFile()
    {
        Of("token").Put([new(Shard, new GatewaySession()), new(new ShardId(1, 2), SessionOf("s-2", null, 4))]);

        Assert.False(File.Exists(Place));
    }

    [Fact]
    public void Put_PlaceThatCannotBeWritten_SaysSo()
    {
        new SessionFile(Path.Combine(_folder.FullName, "no such folder", "session"), new BotToken("token"), _clock, new Logger<SessionFile>(_logs))
            .Put([new(Shard, SessionOf("s-1", "wss://resume.invalid", 17))]);

        Assert.Contains(_logs.Lines, line => line.Contains("is not put by", StringComparison.Ordinal));
    }

    [Fact]
    public void Put_AFile_IsItsOwnersAloneAndHoldsNoToken()
    {
        Of("marker-token").Put([new(Shard, SessionOf("s-1", "wss://resume.invalid", 17))]);

        Assert.DoesNotContain("marker-token", File.ReadAllText(Place), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Place));
        }
    }

    private SessionFile Of(string token) => new(Place, new BotToken(token), _clock, new Logger<SessionFile>(_logs));

    private static GatewaySession SessionOf(string id, string? address, long sequence)
    {
        var session = new GatewaySession();
        session.Begin(id, address);
        session.Count(sequence);
        return session;
    }
}
