using System.Text.Json.Nodes;
using CrewBot.Chat.Commands;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>What a person does, and what the platform is sent for it.</summary>
public sealed class RoomTests
{
    private const int Ephemeral = 64;

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Command_AnsweredQuickly_GetsAPrivateCardWithButtons()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand(
                "plan", Option("species", 3, "walleye"), Option("depth", 3, "24ft"), Option("mood", 3, "negative"))),
            Limit);

        Assert.Equal(4, answer["type"]!.GetValue<int>());
        var data = answer["data"]!;
        Assert.Equal(Ephemeral, data["flags"]!.GetValue<int>());
        Assert.Equal("""{"parse":[]}""", data["allowed_mentions"]!.ToJsonString());
        Assert.Contains("Walleye", data["embeds"]![0]!["title"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("Share", Labels(data));
        Assert.Contains("Why", Labels(data));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_AnsweredWithAFile_AttachesIt()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = (_, _) => Task.FromResult(new Reply
        {
            Headline = "The log",
            Files = [new ReplyFile("catches.csv", "text/csv", "species"u8.ToArray())],
        });
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        var file = Assert.Single(stage.Server.Requests.Single(request => request.Files.Count > 0).Files);
        Assert.Contains("filename=catches.csv", file.Disposition, StringComparison.Ordinal);
        Assert.Equal("species"u8, file.Content);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_InADirectMessage_AnswersWhatNeedsNoCrew()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            InDirectMessage(stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "burbot")))), Limit);

        Assert.Contains("Burbot", Title(answer), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_DeliveredTwice_IsAnsweredOnce()
    {
        var handled = 0;
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = (_, _) =>
        {
            Interlocked.Increment(ref handled);
            return Task.FromResult(new Reply { Headline = "Once" });
        };
        var command = stage.Make.Command("test", Subcommand("try"));
        await stage.SendAsync(command);
        await stage.AskAsync(command, Limit);
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Equal(2, handled);
        Assert.Equal(2, stage.Server.Requests.Count(IsCallback));
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_TakesLongerThanASecond_IsDeferredThenEdited()
    {
        var clock = new HurriedClock(factor: 10);
        await using var stage = await RoomStage.OpenAsync(Limit, clock);
        var finish = new TaskCompletionSource<Reply>();
        stage.Commands.Work = (_, _) => finish.Task;
        var deferral = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        Assert.Equal("""{"type":5,"data":{"flags":64}}""", deferral.ToJsonString());

        finish.SetResult(new Reply { Headline = "At last", Lines = ["It took a while."] });
        var edit = await stage.Server.NextRequestAsync("messages/@original", Limit);
        Assert.Equal("PATCH", edit.Method);
        Assert.Equal("At last", edit.Json!["embeds"]![0]!["title"]!.GetValue<string>());
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_BlocksItsThread_IsDeferredAllTheSame()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        using var finish = new ManualResetEventSlim();
        stage.Commands.Work = (_, token) =>
        {
            finish.Wait(token);
            return Task.FromResult(new Reply { Headline = "Awake" });
        };
        var deferral = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        finish.Set();

        Assert.Equal(5, deferral["type"]!.GetValue<int>());
        await stage.Server.NextRequestAsync("messages/@original", Limit);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_DeferredAndMeantForTheCrew_IsPostedBesideThePrivateNote()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        var finish = new TaskCompletionSource<Reply>();
        stage.Commands.Work = (_, _) => finish.Task;
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        finish.SetResult(new Reply { Headline = "Logged: walleye", Audience = Audience.Crew });

        var post = await stage.Server.NextRequestAsync("webhooks/", Limit);
        Assert.Equal("POST", post.Method);
        Assert.Null(post.Json!["flags"]);
        var note = await stage.Server.NextRequestAsync("messages/@original", Limit);
        Assert.Contains("Posted", note.Json!["embeds"]![0]!["description"]!.GetValue<string>(), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_TokenIsTooLate_IsLoggedAndNothingElse()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Server.Faults.Next("/callback", CannedReply.Refusal(404, 10062, "Unknown interaction"));
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        await stage.Logs.LineAsync("could not answer", Limit);

        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        Assert.DoesNotContain(stage.Logs.Lines, line => line.StartsWith("Error", StringComparison.Ordinal));
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_HandlerThrows_TellsTheAsker()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (_, _) => throw new InvalidOperationException("the auger is stuck");
        var answer = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
        Assert.DoesNotContain("auger", answer.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_MeantForTheCrew_IsPosted()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (_, _) => Task.FromResult(new Reply { Headline = "Standings", Audience = Audience.Crew });
        var answer = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Null(answer["data"]!["flags"]);
    }

    [Fact(Timeout = 30_000)]
    public async Task Autocomplete_OfSpecies_OffersWhatFits()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            stage.Make.Autocomplete("rig", Subcommand("plan", Option("species", 3, "wall", focused: true))), Limit);

        Assert.Equal(8, answer["type"]!.GetValue<int>());
        Assert.Equal("walleye", answer["data"]!["choices"]![0]!["value"]!.GetValue<string>());
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData("rig", "plan", "species", "")]
    [InlineData("rig", "plan", "no-such-option", "x")]
    [InlineData("rig", "no-such-verb", "species", "x")]
    [InlineData("rig", "plan", "species", "zzzzzz")]
    public async Task Autocomplete_OfAnything_IsAnsweredWithAtMostTwentyFive(
        string family, string verb, string option, string begun)
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            stage.Make.Autocomplete(family, Subcommand(verb, Option(option, 3, begun, focused: true))), Limit);

        Assert.InRange(answer["data"]!["choices"]!.AsArray().Count, 0, 25);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_OnOnesOwnCard_ChangesTheCard()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var card = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"), Option("mood", 3, "neutral"))), Limit);
        var press = stage.Make.Button(IdOf(card, "Calmer"));
        press["message"]!["flags"] = Ephemeral;
        var update = await stage.AskAsync(press, Limit);

        Assert.Equal(7, update["type"]!.GetValue<int>());
        Assert.Contains("negative", Title(update), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_OnACardThatTheCrewSees_AnswersThePresserAlone()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var card = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"))), Limit);
        var answer = await stage.AskAsync(stage.Make.Button(IdOf(card, "Calmer")), Limit);

        Assert.Equal(4, answer["type"]!.GetValue<int>());
        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_Share_PostsTheSameCardWithoutShare()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var card = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "lake trout"), Option("depth", 3, "60ft"))), Limit);
        var post = await stage.AskAsync(stage.Make.Button(IdOf(card, "Share")), Limit);

        Assert.Equal(Title(card), Title(post));
        Assert.Null(post["data"]!["flags"]);
        Assert.DoesNotContain("Share", Labels(post["data"]!));
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData("2147483648", "/crew setup is for a crew's owner.")]
    [InlineData("32", null)]
    public async Task Button_OfAnOwnersCard_AsksWhatThePresserMay(string permissions, string? refusal)
    {
        var folder = Directory.CreateTempSubdirectory("crewbot-");
        await using (var stage = await RoomStage.OpenAsync(Limit, database: Path.Combine(folder.FullName, "crew.db")))
        {
            stage.Commands.Work = static (_, _) => Task.FromResult(new Reply
            {
                Headline = "For the owner",
                Actions = [new ReplyAction("Add it", ActionKind.Run, "crew setup", new Dictionary<string, string> { ["water"] = "Loon Basin" })],
                Audience = Audience.Crew,
            });
            var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
            var press = stage.Make.Button(IdOf(card, "Add it"));
            press["member"]!["permissions"] = permissions;
            var answer = await stage.AskAsync(press, Limit);

            Assert.Equal(refusal, refusal is null ? null : Description(answer));
            Assert.Equal(refusal is null, answer["data"]!["embeds"]![0]!["title"] is not null);
        }

        folder.Delete(recursive: true);
    }

    [Fact(Timeout = 30_000)]
    public async Task PersonMenu_BestFish_ShowsThatPersonsLongest()
    {
        var folder = Directory.CreateTempSubdirectory("crewbot-");
        await using (var stage = await RoomStage.OpenAsync(Limit, database: Path.Combine(folder.FullName, "crew.db")))
        {
            await stage.AskAsync(Log(stage, "walleye"), Limit);
            var best = await stage.AskAsync(stage.Make.UserCommand("Best fish", StandInData.PersonId), Limit);

            Assert.Contains("20 in", best["data"]!["embeds"]![0]!.ToJsonString(), StringComparison.Ordinal);
            stage.CheckBodies();
        }

        folder.Delete(recursive: true);
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_Why_ShowsTheReasonsToThePresser()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (_, _) => Task.FromResult(new Reply
        {
            Headline = "Answer",
            Lines = ["short"],
            Reasons = ["because of the depth"],
            Actions = [new ReplyAction("Why", ActionKind.Why, TestCommands.Path, Words("x"))],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try", Option("word", 3, "x"))), Limit);
        var why = await stage.AskAsync(stage.Make.Button(IdOf(card, "Why")), Limit);

        Assert.Equal("because of the depth", Description(why));
        Assert.Equal(Ephemeral, why["data"]!["flags"]!.GetValue<int>());
    }

    [Theory(Timeout = 30_000)]
    [InlineData("trip:v0:42:join")]
    [InlineData("")]
    [InlineData("1R*unknown-key")]
    [InlineData("1Rzzrig_plan~0walleye")]
    [InlineData("1R")]
    public async Task Button_OldOrForeign_GetsAPoliteLine(string id)
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(stage.Make.Button(id), Limit);

        Assert.Contains("Ask again", Description(answer), StringComparison.Ordinal);
        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_WithoutWhatItNeeds_OpensAFormWhoseWordsAreAnswered()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var form = await stage.AskAsync(stage.Make.Command("rig", Subcommand("plan", Option("depth", 3, "24ft"))), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var field = form["data"]!["components"]![0]!["component"]!["custom_id"]!.GetValue<string>();

        var answer = await stage.AskAsync(
            stage.Make.Modal(form["data"]!["custom_id"]!.GetValue<string>(), (field, "walleye negative")), Limit);
        Assert.Contains("Walleye", Title(answer), StringComparison.Ordinal);
        Assert.Contains("24 ft", Title(answer), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task MessageMenu_GivesTheCommandWhatTheMessageHolds()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        Request? seen = null;
        stage.Commands.Work = (request, _) =>
        {
            seen = request;
            return Task.FromResult(new Reply { Headline = "Read" });
        };
        var call = stage.Make.MessageCommand("Try this message", "a walleye", photo: "https://files.example/catch.jpg?ex=1");
        await stage.AskAsync(call, Limit);

        Assert.Equal("a walleye", seen!.Written["word"]);
        Assert.Equal("Ada of Loon Basin", seen.Written["author"]);
        Assert.Equal("2026-11-25T07:00:00Z", seen.Written["sent"]);
        Assert.EndsWith("/1300000000000000001", seen.Written["link"], StringComparison.Ordinal);
        var photo = Attachment.Of(new Uri(seen.Written["photo"]));
        Assert.Equal("https://files.example/catch.jpg?ex=1", photo.Address.AbsoluteUri);
        Assert.Equal(("1500000000000000001", "catch.jpg", "image/jpeg", 204800), (photo.Id, photo.Name, photo.ContentType, photo.Size));
    }

    [Fact(Timeout = 30_000)]
    public async Task MessageMenu_MessageLacksWhatIsNeeded_OpensAFormFilledInAsFarAsItSays()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var direct = await stage.AskAsync(stage.Make.MessageCommand("Plan a rig", "walleye 24ft negative"), Limit);
        Assert.Contains("Walleye", Title(direct), StringComparison.Ordinal);

        var form = await stage.AskAsync(stage.Make.MessageCommand("Plan a rig", "anything in 24ft, -12C?"), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var fields = form["data"]!["components"]!.AsArray().Select(label => label!["component"]!).ToList();
        Assert.Equal(["species", "depth", "mood"], fields.Select(field => field["custom_id"]!.GetValue<string>()));
        Assert.Equal("24ft", fields[1]["value"]!.GetValue<string>());

        var answer = await stage.AskAsync(
            stage.Make.Modal(IdOf(form), ("species", "burbot"), ("depth", "30ft"), ("mood", ""), ("step", "3")), Limit);
        Assert.Contains("Burbot", Title(answer), StringComparison.Ordinal);
        Assert.Contains("30 ft", Title(answer), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PersonMenu_GivesTheCommandThePerson()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply { Headline = request.Written["who"] });
        var answer = await stage.AskAsync(stage.Make.UserCommand("Try this person", 1100000000000000009), Limit);
        Assert.Equal("@\u200B1100000000000000009", Title(answer));

        var gone = await stage.AskAsync(stage.Make.UserCommand("Weigh this one", StandInData.PersonId), Limit);
        Assert.Contains("gone", Description(gone), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Form_OpenedByAButton_StartsWithWhatIsKnownAndTakesOnlyItsFields()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = string.Join(" ", request.Written.Select(option => $"{option.Key}={option.Value}")),
            Actions = [ReplyAction.Form("Correct", TestCommands.Path, new Dictionary<string, string> { ["word"] = "roach", ["other"] = "kept" }, TestCommands.Word)],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var form = await stage.AskAsync(stage.Make.Button(IdOf(card, "Correct")), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var field = Assert.Single(form["data"]!["components"]!.AsArray())!["component"]!;
        Assert.Equal("roach", field["value"]!.GetValue<string>());

        var answer = await stage.AskAsync(stage.Make.Modal(IdOf(form), ("word", "rudd"), ("author", "somebody")), Limit);
        Assert.Equal("other=kept word=rudd", Title(answer));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Choice_OfAReplysOwnList_RunsItsCommand()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = request.Written.GetValueOrDefault("word", "none"),
            Choices = [ReplyChoice.Of("Which fish", TestCommands.Path, Words("any"), TestCommands.Word, [("A pike", "pike"), ("A perch", "perch")])],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var list = card["data"]!["components"]![0]!["components"]![0]!;
        Assert.Equal("Which fish", list["placeholder"]!.GetValue<string>());

        var chosen = list["options"]![1]!["value"]!.GetValue<string>();
        Assert.Equal("perch", Title(await stage.AskAsync(stage.Make.Select(list["custom_id"]!.GetValue<string>(), chosen), Limit)));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_WithAFileAndAPerson_GivesBothToTheCommand()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        Request? seen = null;
        stage.Commands.Work = (request, _) =>
        {
            seen = request;
            return Task.FromResult(new Reply { Headline = "Read" });
        };
        var call = InteractionMaker.WithFile(
            stage.Make.Command("test", Subcommand("try", Option("who", 6, "1100000000000000009"), Option("photo", 11, "1500000000000000001"))),
            "https://files.example/catch.jpg");

        await stage.AskAsync(call, Limit);

        Assert.Equal("@1100000000000000009", seen!.Written["who"]);
        Assert.Equal(
            "https://files.example/catch.jpg#id=1500000000000000001&name=catch.jpg&type=image%2Fjpeg&size=204800", seen.Written["photo"]);
    }

    [Fact(Timeout = 30_000)]
    public async Task List_OfManyActions_IsAnsweredLikeAButton()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = request.Written.GetValueOrDefault("word", "none"),
            Actions = [.. Enumerable.Range(1, 20).Select(number =>
                new ReplyAction($"No. {number}", ActionKind.Run, TestCommands.Path, Words($"choice{number}")))],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var rows = card["data"]!["components"]!.AsArray();
        Assert.Equal([5, 5, 1], rows.Select(row => row!["components"]!.AsArray().Count));
        var list = rows[2]!["components"]![0]!;
        var last = list["options"]!.AsArray()[^1]!["value"]!.GetValue<string>();

        var answer = await stage.AskAsync(stage.Make.Select(list["custom_id"]!.GetValue<string>(), last), Limit);
        Assert.Equal("choice20", Title(answer));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Callbacks_FailOneInThree_NoAnswerIsLost()
    {
        var calls = 0;
        await using var stage = await RoomStage.OpenAsync(Limit, prepare: server => server.Faults.Otherwise = (_, path) =>
            path.EndsWith("/callback", StringComparison.Ordinal) && Interlocked.Increment(ref calls) % 3 == 0
                ? (calls / 3 % 3) switch
                {
                    0 => CannedReply.Limited(0.1),
                    1 => new CannedReply(500),
                    _ => new CannedReply(503),
                }
                : null);
        var ids = new List<string>();
        for (var number = 0; number < 60; number++)
        {
            var command = stage.Make.Command("test", Subcommand("try"));
            ids.Add(command["id"]!.GetValue<string>());
            await stage.SendAsync(command);
        }

        foreach (var _ in ids)
        {
            await stage.Server.NextAnsweredAsync(Limit);
        }

        Assert.Empty(ids.Except(stage.Server.AnsweredInteractions));
    }

    [Theory(Timeout = 30_000)]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Command_SentWhileTheConnectionWasGone_ChangesSomethingOnlyIfSomebodyStillWaits(bool waits)
    {
        var folder = Directory.CreateTempSubdirectory("crewbot-");
        await using (var stage = await RoomStage.OpenAsync(Limit, database: Path.Combine(folder.FullName, "crew.db")))
        {
            await stage.AskAsync(Log(stage, "burbot"), Limit);
            var missed = Log(stage, "walleye");
            if (!waits)
            {
                stage.Server.Faults.Next($"interactions/{missed["id"]}", CannedReply.Refusal(404, 10062, "Unknown interaction"));
            }

            var socket = stage.Server.LatestSocket!;
            socket.Cut();
            socket.Session!.Add("INTERACTION_CREATE", missed.ToJsonString());
            await stage.AgainAsync(Limit);
            await (waits
                ? (Task)stage.Server.NextRequestAsync($"{missed["token"]}/messages/@original", Limit)
                : stage.Logs.LineAsync("could not defer", Limit));

            var list = await stage.AskAsync(stage.Make.Command("catch", Subcommand("list")), Limit);
            Assert.Equal(waits, list.ToJsonString().Contains("alleye", StringComparison.Ordinal));
        }

        folder.Delete(recursive: true);
    }

    [Fact(Timeout = 30_000)]
    public async Task Stop_WorkIsAcknowledged_FinishesIt()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        var finish = new TaskCompletionSource<Reply>();
        stage.Commands.Work = (_, _) => finish.Task;
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        await stage.StopAsync();
        await stage.Server.LatestSocket!.Ended;
        Assert.False(stage.Run.IsCompleted);
        finish.SetResult(new Reply { Headline = "Just in time" });
        await stage.Server.NextRequestAsync("messages/@original", Limit);
        await stage.Run;
        Assert.Equal(4000, stage.Server.LatestSocket!.ClientCloseCode);
    }

    [Fact(Timeout = 30_000)]
    public async Task Everything_WithMarkerTokens_ShowsNoneInTheLog()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Server.Faults.Next("/callback", CannedReply.Refusal(400, 50035, "Invalid Form Body"));
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        stage.Server.LatestSocket!.Cut();
        await stage.Server.NextActiveAsync(Limit);
        await stage.StopAsync();
        await stage.Run;

        Assert.NotEmpty(stage.Logs.Lines);
        Assert.DoesNotContain(stage.Logs.Lines, line =>
            line.Contains("marker-token", StringComparison.Ordinal));
    }

    private static JsonObject Log(RoomStage stage, string species) =>
        stage.Make.Command("catch", Subcommand("log", Option("species", 3, species), Option("length", 3, "20in")));

    private static bool IsCallback(RecordedRequest request) =>
        request.Path.EndsWith("/callback", StringComparison.Ordinal);

    private static string Title(JsonNode answer) => answer["data"]!["embeds"]![0]!["title"]!.GetValue<string>();

    private static string Description(JsonNode answer) =>
        answer["data"]!["embeds"]![0]!["description"]!.GetValue<string>();

    private static IEnumerable<JsonNode> Buttons(JsonNode data) =>
        data["components"]!.AsArray().SelectMany(row => row!["components"]!.AsArray()).Select(button => button!);

    private static IEnumerable<string> Labels(JsonNode data) =>
        Buttons(data).Select(button => button["label"]!.GetValue<string>());

    private static string IdOf(JsonNode answer, string label) =>
        Buttons(answer["data"]!).Single(button => button["label"]!.GetValue<string>() == label)["custom_id"]!.GetValue<string>();

    private static string IdOf(JsonNode form) => form["data"]!["custom_id"]!.GetValue<string>();

    private static Dictionary<string, string> Words(string word) => new() { ["word"] = word };
}
