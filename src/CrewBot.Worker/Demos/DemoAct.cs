namespace CrewBot.Worker.Demos;

/// <summary>What somebody typed on a day of the invented winter.</summary>
internal sealed record DemoAct(DateTimeOffset At, string Angler, string Command);
