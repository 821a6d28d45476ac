using System.Text;
using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Tests;

/// <summary>Surroundings of a process that a test can script and read.</summary>
internal sealed class Desk
{
    private readonly StringBuilder _output = new();
    private readonly StringBuilder _error = new();

    public string Input { get; init; } = "";

    public bool InputIsTerminal { get; init; }

    public bool OutputIsTerminal { get; init; }

    public int Width { get; init; } = 80;

    public Dictionary<string, string> Environment { get; init; } = [];

    public string Output => _output.ToString();

    public string Error => _error.ToString();

    public IReadOnlyList<string> ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public Surroundings Surroundings() => new()
    {
        Input = new StringReader(Input),
        Output = new StringWriter(_output),
        Error = new StringWriter(_error),
        InputIsTerminal = InputIsTerminal,
        OutputIsTerminal = OutputIsTerminal,
        Width = () => Width,
        UserName = "ida",
        Environment = Environment,
    };

    public Task<int> StartAsync(params string[] args) => Start.RunAsync(args, Surroundings());
}
