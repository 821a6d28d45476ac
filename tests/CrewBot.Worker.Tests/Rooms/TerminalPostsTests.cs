using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Tests.Rooms;

public sealed class TerminalPostsTests
{
    private static readonly Reply Card = new() { Headline = "Saturday: 3 come", Lines = ["Sled: Bo"] };

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Posts_ShownEditedAndTakenBack_ArePrintedWithTheirPlace()
    {
        var desk = new Desk();
        var posts = Posts(desk);

        var posted = await posts.PostAsync("room", "n1", Card, notifies: true, Limit);
        await posts.EditAsync(posted, Card with { Headline = "Saturday: 4 come" }, Limit);
        await posts.DeleteAsync(posted, Limit);

        Assert.Equal(
            "[room, attention] Saturday: 3 come\nSled: Bo\n\n[room, edited] Saturday: 4 come\nSled: Bo\n\n[room] Taken back: Saturday: 4 come\n\n",
            desk.Output.ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("local", "room", true)]
    [InlineData("local", "@ida", true)]
    [InlineData("local", "ice-reports", true)]
    [InlineData("local", "1100000000000000009", false)]
    [InlineData("local", "@1100000000000000009", false)]
    [InlineData("loons", "room", false)]
    public void Reaches_PlacesOfItsOwnCrewButNoPlatforms(string crew, string place, bool reaches) =>
        Assert.Equal(reaches, Posts(new Desk()).Reaches(crew, place));

    [Fact]
    public async Task PostAsync_SomebodyIsAsked_AsksAgainBelow()
    {
        var asked = new TaskCompletionSource();
        var answer = new TaskCompletionSource<string>();
        var desk = new Desk { InputIsTerminal = true, OutputIsTerminal = true, Environment = { ["TERM"] = "dumb" } };
        var surroundings = desk.Surroundings() with { Input = new WaitingInput(asked, answer.Task) };
        var lines = new PlainLines(surroundings);
        var posts = new TerminalPosts(lines, new ReplyRenderer(ConsoleOutput.Open(surroundings)), surroundings, Ida);
        var next = Task.Run(lines.Next, Limit);
        await asked.Task.WaitAsync(Limit);

        await posts.PostAsync("room", "n1", new Reply { Headline = "Saturday: 3 come" }, notifies: false, Limit);
        answer.SetResult("help\n");

        Assert.Equal("help", await next);
        Assert.Equal("crewbot> \n[room] Saturday: 3 come\n\ncrewbot> ", desk.Output.ReplaceLineEndings("\n"));
    }

    private static readonly Caller Ida = new("local", "ida", Role.Owner, CrewUnits.Customary);

    private static TerminalPosts Posts(Desk desk)
    {
        var surroundings = desk.Surroundings();
        return new TerminalPosts(new PlainLines(surroundings), new ReplyRenderer(ConsoleOutput.Open(surroundings)), surroundings, Ida);
    }

    private sealed class WaitingInput(TaskCompletionSource asked, Task<string> text) : TextReader
    {
        private StringReader? _text;

        public override int Read()
        {
            asked.TrySetResult();
            _text ??= new StringReader(text.GetAwaiter().GetResult());
            return _text.Read();
        }

        public override int Peek() => (_text ??= new StringReader(text.GetAwaiter().GetResult())).Peek();
    }
}
