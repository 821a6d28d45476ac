using System.Text.Json;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class RegistrationTests
{
    private static readonly CommandDefinition[] Definitions =
        new CommandDefinitions(TestCommands.RealCatalog, new French()).Write(global: true);

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    /// <summary>The documented limits of command definitions.</summary>
    [Fact]
    public void Definitions_OfTheRealCommands_FitEveryDocumentedLimit()
    {
        Assert.Empty(DefinitionLimits.Faults(Definitions));
    }

    [Fact]
    public void Descriptions_OfTheRealCommands_AreAllThereInFrench()
    {
        var french = new French();
        var texts = TestCommands.RealCatalog.Commands
            .SelectMany(info => info.Options.Select(option => option.Description).Append(info.Description))
            .ToHashSet();

        Assert.Empty(texts.Except(french.Known));
        Assert.Empty(french.Known.Except(texts));
        Assert.All(texts, text => Assert.InRange(french.Of(text)!["fr"].Length, 1, 100));
    }

    [Fact]
    public void Definitions_OfWhatNeedsNoCrew_AreOpenInDirectMessagesToo()
    {
        var rig = Definitions.Single(command => command.Name == "rig");
        Assert.Equal([InteractionContext.Guild, InteractionContext.BotDirectMessage], rig.Contexts);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NothingRegistered_RegistersOnceAndFitsThePublishedDescription()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var put = await stage.Server.NextRequestAsync("/commands", Limit);
        put = put.Method == "PUT" ? put : await stage.Server.NextRequestAsync("/commands", Limit);
        Assert.Equal("PUT", put.Method);
        await stage.Logs.LineAsync("commands registered", Limit);

        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData(true)]
    [InlineData(false)]
    public async Task RunAsync_RegisteredAlready_WritesNothing(bool serverGivesIds)
    {
        var settings = new StandInSettings { GivesCommandIds = serverGivesIds };
        await using var stage = await RoomStage.OpenAsync(Limit, settings: settings);
        await stage.Logs.LineAsync("commands registered", Limit);
        await stage.RegisterAgainAsync(Limit);
        Assert.Single(stage.Server.Requests, request => request.Method == "PUT");
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_TestGuildIsConfigured_RegistersThereAlone()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, testGuild: "1100000000000000001");
        await stage.Logs.LineAsync("commands registered", Limit);

        var put = Assert.Single(stage.Server.Requests, request => request.Method == "PUT");
        Assert.Contains("/guilds/1100000000000000001/commands", put.Path, StringComparison.Ordinal);
        Assert.All(put.Json!.AsArray(), command => Assert.Null(command!["contexts"]));
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData(400, 30034)]
    [InlineData(403, 50001)]
    public async Task RunAsync_Refused_LeavesTheRoomOpen(int status, int code)
    {
        await using var stage = await RoomStage.OpenAsync(Limit, prepare: server =>
            server.Faults.Next("/commands", CannedReply.Refusal(status, code, "no")));
        await stage.Logs.LineAsync("Commands not registered", Limit);

        await stage.AskAsync(stage.Make.Command("test", InteractionMaker.Subcommand("try")), Limit);
    }

    /// <summary>What a server may add, leave out or order otherwise without meaning anything else.</summary>
    [Fact]
    public void Canonical_ServersOwnSpelling_IsTheSame()
    {
        var text = JsonSerializer.Serialize(Definitions, WireJson.Default.CommandDefinitionArray);
        var spelled = JsonSerializer.Deserialize(text, WireJson.Default.CommandDefinitionArray)!
            .Select(command => command with
            {
                Id = new Snowflake(5),
                Description = command.Description ?? "",
                Options = [.. (command.Options ?? []).Select(option => option with { Required = option.Required ?? false, Autocomplete = false })],
                Contexts = command.Contexts is null ? null : [.. command.Contexts.Reverse()],
            })
            .Reverse();

        Assert.Equal(Registration.Canonical(Definitions), Registration.Canonical(spelled));
        Assert.NotEqual(Registration.Canonical(Definitions), Registration.Canonical(Definitions.Skip(1)));
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void Faults_DefinitionBeyondALimit_IsNamed(string what)
    {
        Assert.NotEmpty(DefinitionLimits.Faults([BrokenOnes[what]]));
    }

    public static TheoryData<string> Broken => [.. BrokenOnes.Keys];

    private static Dictionary<string, CommandDefinition> BrokenOnes { get; } = new()
    {
        ["capital in the name"] = Command() with { Name = "Rig" },
        ["blank in the name"] = Command() with { Name = "rig plan" },
        ["name too long"] = Command() with { Name = new string('r', 33) },
        ["no description"] = Command() with { Description = null },
        ["description too long"] = Command() with { Description = new string('d', 101) },
        ["too many options"] = Command(Enumerable.Range(0, 26).Select(number => Option($"o{number}"))),
        ["two options of one name"] = Command([Option("o"), Option("o")]),
        ["required after optional"] = Command([Option("a"), Option("b") with { Required = true }]),
        ["too many choices"] = Command([Option("a") with { Choices = [.. Enumerable.Range(0, 26).Select(Choice)] }]),
        ["choices and autocomplete"] = Command([Option("a") with { Choices = [Choice(1)], Autocomplete = true }]),
        ["too much in all"] = Command(Enumerable.Range(0, 25).Select(number => Option($"o{number}") with
        {
            Choices = [.. Enumerable.Range(0, 25).Select(Choice)],
        })),
    };

    private static CommandDefinition Command(IEnumerable<CommandOptionDefinition>? options = null) => new()
    {
        Name = "rig",
        Type = CommandType.Slash,
        Description = "d",
        Options = [.. options ?? []],
    };

    private static CommandOptionDefinition Option(string name) => new()
    {
        Type = OptionType.Text,
        Name = name,
        Description = "d",
    };

    private static Choice Choice(int number) => new() { Name = $"choice {number}", Value = $"value {number}" };
}
