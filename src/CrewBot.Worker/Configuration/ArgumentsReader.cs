using System.CommandLine;
using System.CommandLine.Invocation;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Configuration;

/// <summary>Reads the process's own arguments, and answers <c>--help</c> and <c>--version</c>.</summary>
internal sealed class ArgumentsReader
{
    private const string Usage =
        "Type: say \"<command>\" [--json] [--crew NAME] [--as NAME] [--role owner|steward|member] [--id ID] [--at TIME] "
        + "[--files FOLDER] [--pictures FOLDER] [--config FILE], selfcheck, backup FILE, restore FILE [--force], demo, or nothing for the rooms.";

    private readonly Option<string> _crew = new("--crew") { Description = "The crew that asks (local)", HelpName = "NAME", Recursive = true };
    private readonly Option<string> _member = new("--as") { Description = "Who asks (the system's user)", HelpName = "NAME", Recursive = true };
    private readonly Option<string> _role = new("--role") { Description = "owner, steward or member (owner)", HelpName = "ROLE", Recursive = true };
    private readonly Option<string> _config = new("--config") { Description = "A configuration file", HelpName = "FILE", Recursive = true };
    private readonly Option<string> _files = new("--files") { Description = "Where files of replies are written (here)", HelpName = "FOLDER", Recursive = true };
    private readonly Option<string> _pictures = new("--pictures") { Description = "Draw the picture of every answer, into this folder", HelpName = "FOLDER", Recursive = true };
    private readonly Argument<string> _command = new("command") { Description = "The command in quotation marks, or - to read it from standard input" };
    private readonly Option<bool> _json = new("--json") { Description = "Print the whole reply as a JSON object" };
    private readonly Option<string> _id = new("--id") { Description = "The request's id, to replay one", HelpName = "ID" };
    private readonly Option<string> _at = new("--at") { Description = "When it is asked (now), such as 2026-01-17T07:30-06:00", HelpName = "TIME" };

    private readonly Argument<string> _file = new("file") { Description = "The copy of the database" };
    private readonly Option<bool> _force = new("--force") { Description = "Replace a database that is there" };

    private readonly Surroundings _surroundings;
    private readonly Func<ProcessArguments, Task<int>> _run;
    private readonly RootCommand _root;

    /// <param name="surroundings">Where the process stands.</param>
    /// <param name="run">Does what the arguments ask for; gives the exit code.</param>
    public ArgumentsReader(Surroundings surroundings, Func<ProcessArguments, Task<int>> run)
    {
        _surroundings = surroundings;
        _run = run;
        var say = new Command("say", "Answers one command and leaves: 0 answered, 1 refused, 2 unusable call.") { _command, _json, _id, _at };
        say.SetAction(parsed => RunAsync(() => Arguments(parsed, Say(parsed))));
        var selfCheck = new Command("selfcheck", "Checks configuration, token, network and clock: one line each.");
        selfCheck.SetAction(parsed => RunAsync(() => Arguments(parsed, say: null) with { SelfCheck = true }));
        var backup = new Command("backup", "Copies the database while it serves, and checks the copy.") { _file };
        backup.SetAction(parsed => RunAsync(() => Arguments(parsed, say: null) with { Copy = Copy(parsed, restores: false) }));
        var restore = new Command("restore", "Checks a backup and puts it in the database's place.") { _file, _force };
        restore.SetAction(parsed => RunAsync(() => Arguments(parsed, say: null) with { Copy = Copy(parsed, restores: true) }));
        var demo = new Command("demo", "Fills a new database with an invented winter to try the log on.");
        demo.SetAction(parsed => RunAsync(() => Arguments(parsed, say: null) with { Demo = true }));
        _root = new RootCommand("CrewBot, the extra hand of an ice-fishing crew. Without a command it opens a room in this terminal, and joins the crew's Discord when it has a token.")
        {
            say, selfCheck, backup, restore, demo, _crew, _member, _role, _files, _pictures, _config,
        };
        _root.SetAction(parsed => RunAsync(() => Arguments(parsed, say: null)));
    }

    /// <summary>Reads the arguments and runs what they ask for.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(string[] args)
    {
        var parsed = _root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction)
        {
            return Refuse(parsed.Errors[0].Message);
        }

        // The host listens to signals, and an unexpected fault shall look like one.
        var code = await parsed.InvokeAsync(new InvocationConfiguration
        {
            Output = _surroundings.Output,
            Error = _surroundings.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
        _surroundings.Output.Flush();
        return code;
    }

    private async Task<int> RunAsync(Func<ProcessArguments> read)
    {
        ProcessArguments arguments;
        try
        {
            arguments = read();
        }
        catch (FormatException unusable)
        {
            return Refuse(unusable.Message);
        }

        return await _run(arguments);
    }

    private int Refuse(string why)
    {
        _surroundings.Error.WriteLine(SafeText.Of($"{why} {Usage}"));
        return ExitCode.Unusable;
    }

    private ProcessArguments Arguments(ParseResult parsed, SayArguments? say)
    {
        var identity = new Identity(
            ArgumentText.Name("--crew", parsed.GetValue(_crew) ?? "local"),
            ArgumentText.Name("--as", parsed.GetValue(_member) ?? _surroundings.UserName),
            ArgumentText.Role(parsed.GetValue(_role) ?? "owner"));
        return new ProcessArguments(identity, parsed.GetValue(_config), say)
        {
            FilesFolder = Path.GetFullPath(parsed.GetValue(_files) ?? "."),
            PicturesFolder = parsed.GetValue(_pictures) is { } pictures ? Path.GetFullPath(pictures) : null,
        };
    }

    private CopyArguments Copy(ParseResult parsed, bool restores) =>
        new(Path.GetFullPath(parsed.GetRequiredValue(_file)), restores, restores && parsed.GetValue(_force));

    private SayArguments Say(ParseResult parsed) => new(
        parsed.GetRequiredValue(_command),
        parsed.GetValue(_json),
        parsed.GetValue(_id) is { } written ? ArgumentText.Name("--id", written) : null,
        parsed.GetValue(_at) is { } time ? ArgumentText.Instant("--at", time) : null);
}
