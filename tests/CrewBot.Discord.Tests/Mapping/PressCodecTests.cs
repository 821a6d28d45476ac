using CrewBot.Chat.Commands;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.Tests.Fakes;
using CsCheck;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class PressCodecTests : IDisposable
{
    private readonly LogBook _logs = new();
    private readonly PressCodec _codec;

    public PressCodecTests() => _codec = new PressCodec(
        TestCommands.Create(_logs).Catalog, new LongButtons(new ButtonBook(CrewBook.None), TimeProvider.System, new Logger<LongButtons>(_logs)));

    public void Dispose() => _logs.Dispose();

    [Fact]
    public void Write_AnyCommand_FitsAndReadsBackTheSame()
    {
        Gen.Select(Gen.Enum<PressKind>(), Gen.OneOf(Gen.String[1, 80], Gen.Const("doré jaune"), Gen.Const("カワカマス"), Gen.Const("🎣 24ft"), Gen.Const("100% _sure_ ~x~")), Gen.String[1, 200]).Sample((kind, word, other) =>
        {
            var options = new Dictionary<string, string> { ["word"] = word, ["other"] = other };
            var id = _codec.Write(new Press(kind, TestCommands.Path, options))!;
            var read = Read(id);

            return id.Length <= 100
                && id.All(character => character is > ' ' and < '\u007f')
                && read!.Kind == kind
                && read.Path == TestCommands.Path
                && read.Options.Count == 2
                && read.Options["word"] == word
                && read.Options["other"] == other;
        });
    }

    [Fact]
    public void Write_AUsualRig_NeedsNoMemory()
    {
        var options = new Dictionary<string, string>
        {
            ["species"] = "walleye",
            ["depth"] = "24ft",
            ["mood"] = "negative",
            ["presentation"] = "jigging spoon",
            ["step"] = "1",
        };
        var id = _codec.Write(new Press(PressKind.Run, "rig plan", options))!;

        Assert.DoesNotContain('*', id);
    }

    [Fact]
    public void Write_CommandThatDoesNotExist_GivesNoButton()
    {
        Assert.Null(_codec.Write(new Press(PressKind.Run, "rig fly", new Dictionary<string, string>())));
    }

    [Fact]
    public void Read_AnyText_NeverThrows()
    {
        Gen.String[0, 120].Sample(text => Read(text)?.Options is null or { Count: >= 0 });
        Gen.String[0, 90].Sample(text => Read("1R" + text)?.Options is null or { Count: >= 0 });
    }

    // Nothing is read from a file here, so the answer is there at once.
    private Press? Read(string id) => _codec.ReadAsync(id, null, TestContext.Current.CancellationToken).AsTask().GetAwaiter().GetResult();
}
