using CrewBot.Chat.Commands;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.Wire;
using Role = CrewBot.Chat.Commands.Role;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class CallerReaderTests
{
    // Permission bits as published: ADMINISTRATOR 1<<3, MANAGE_GUILD 1<<5, MANAGE_EVENTS 1<<33.
    [Theory]
    [InlineData("8", Role.Owner)]
    [InlineData("32", Role.Owner)]
    [InlineData("8589934592", Role.Steward)]
    [InlineData("2147483648", Role.Member)]
    [InlineData("0", Role.Member)]
    [InlineData("", Role.Member)]
    [InlineData(null, Role.Member)]
    [InlineData("-1", Role.Member)]
    [InlineData("many", Role.Member)]
    [InlineData("340282366920938463463374607431768211456", Role.Member)]
    [InlineData("340282366920938463463374607431768211464", Role.Owner)]
    public void Read_Permissions_DecideTheRole(string? permissions, Role role)
    {
        Assert.Equal(role, CallerReader.Read(Interaction() with { Member = new Member { Permissions = permissions } }).Role);
    }

    [Theory]
    [InlineData("en-US", "fr", CrewUnits.Customary)]
    [InlineData("fr", "en-US", CrewUnits.Metric)]
    [InlineData(null, "fi", CrewUnits.Metric)]
    [InlineData(null, null, CrewUnits.Customary)]
    public void Read_Locales_TheCrewsDecidesTheUnits(string? crew, string? person, CrewUnits units)
    {
        Assert.Equal(units, CallerReader.Read(Interaction() with { GuildLocale = crew, Locale = person }).Units);
    }

    [Fact]
    public void Read_DirectMessage_HasNoCrew()
    {
        var caller = CallerReader.Read(Interaction() with { User = new User { Id = new Snowflake(3) } });

        Assert.Null(caller.Crew);
        Assert.Equal("3", caller.Member);
        Assert.Equal(Role.Member, caller.Role);
    }

    private static Interaction Interaction() => new()
    {
        Id = new Snowflake(1),
        Type = InteractionType.Command,
        Token = "t",
    };
}
