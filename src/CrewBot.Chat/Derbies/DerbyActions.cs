using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>The buttons under derby messages. Each names its derby, so that it means the same whatever is on later.</summary>
internal static class DerbyActions
{
    public static ReplyAction Join(Derby derby) => Run("Join", "derby join", derby);

    public static ReplyAction Standings(Derby derby) => Run("Standings", "derby standings", derby);

    public static ReplyAction Results(Derby derby) => Run("Results with a file", "derby results", derby);

    public static ReplyAction Enter(Derby derby, long caught) => Run($"Enter in {derby.Name}", "derby enter", derby, ("catch", Text(caught)));

    public static ReplyAction Saw(Derby derby, int entry) => Run("I saw it", "derby saw", derby, ("entry", Text(entry)));

    public static ReplyAction Why(Derby derby) => Run("Why", "derby why", derby);

    public static ReplyAction Accept(Derby derby, int entry) => Rule($"Accept {entry}", derby, entry, "accept");

    public static ReplyAction WhoSaw(Derby derby, int entry) => Rule($"Who saw {entry}?", derby, entry, "ask");

    /// <summary>Asks for the reason before it refuses.</summary>
    public static ReplyAction Refuse(Derby derby, int entry, DerbyOptions options) => ReplyAction.Form(
        $"Refuse {entry}", "derby rulings", OptionsOf(derby, ("entry", Text(entry)), ("ruling", "refuse")), options.RulingReason);

    private static ReplyAction Rule(string label, Derby derby, int entry, string ruling) =>
        Run(label, "derby rulings", derby, ("entry", Text(entry)), ("ruling", ruling));

    private static ReplyAction Run(string label, string path, Derby derby, params (string Name, string Text)[] more) =>
        new(label, ActionKind.Run, path, OptionsOf(derby, more));

    private static Dictionary<string, string> OptionsOf(Derby derby, params (string Name, string Text)[] more) =>
        more.Append(("derby", Text(derby.Number))).ToDictionary(option => option.Item1, option => option.Item2);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
