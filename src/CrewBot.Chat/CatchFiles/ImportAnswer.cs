using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Says what an import would do, or did.</summary>
internal static class ImportAnswer
{
    private const int MostRefusals = 4;

    /// <summary>The answer to a dry run.</summary>
    public static Reply Tried(ImportPlan plan, Request request, CommandOption confirm) => plan.New.Count == 0
        ? Of(plan, Nothing(plan))
        : Of(plan, $"Nothing is written yet: {Fish(plan.New.Count)} would be added{Rest(plan)}", "Send it again with confirm:yes to add them.") with
        {
            Actions = [new($"Add {Fish(plan.New.Count)}", ActionKind.Run, request.Path, new Dictionary<string, string>(request.Written) { [confirm.Name] = "yes" }), new("Why", ActionKind.Why, request.Path, request.Written)],
        };

    /// <summary>The answer to a confirmed import.</summary>
    public static Reply Written(ImportPlan plan) => Of(plan, $"Added {Fish(plan.New.Count)} to the log{Rest(plan)}");

    /// <summary>Why there is nothing to add.</summary>
    public static string Nothing(ImportPlan plan) => plan switch
    {
        { Rows.Count: 0 } => "The file has no rows below the names of its columns.",
        { Refused.Count: 0 } => $"All {plan.Known} rows are in the log already: nothing to add.",
        _ => $"Nothing to add{Rest(plan)}.",
    };

    private static Reply Of(ImportPlan plan, string headline, params string[] further) => new()
    {
        Headline = headline,
        Lines =
        [
            .. plan.Refused.Take(MostRefusals).Select(Refusal),
            .. plan.Refused.Count > MostRefusals ? [$"And {plan.Refused.Count - MostRefusals} more refused: Why lists them."] : (string[])[],
            .. plan.Odd.Count > 0 ? [$"{plan.Odd.Count} odd, though possible; line {plan.Odd[0].Line}: {plan.Odd[0].Oddity}"] : (string[])[],
            .. New("water or spot", "waters or spots", plan.NewPlaces),
            .. New("angler", "anglers", plan.NewAnglers),
            .. plan.Ignored.Count > 0 ? [$"Columns without a meaning here: {string.Join(", ", plan.Ignored.Take(5).Select(Quoting.Quote))}."] : (string[])[],
            .. further,
        ],
        Reasons = [.. plan.Refused.Select(Refusal), .. plan.Odd.Select(row => $"line {row.Line}, odd: {row.Oddity}")],
        Figures = [CatchFigures.Added.Of(plan.New.Count), CatchFigures.Known.Of(plan.Known), CatchFigures.Refused.Of(plan.Refused.Count)],
    };

    private static string Rest(ImportPlan plan)
    {
        string?[] parts =
        [
            plan.Known > 0 ? $"{plan.Known} known already" : null,
            plan.Refused.Count > 0 ? $"{plan.Refused.Count} refused" : null,
        ];
        return string.Concat(parts.OfType<string>().Select(part => $", {part}"));
    }

    private static IEnumerable<string> New(string one, string many, IReadOnlyList<string> names) => names.Count == 0
        ? []
        : [$"New {(names.Count == 1 ? one : many)}: {string.Join("; ", names.Take(5))}{(names.Count > 5 ? $" and {names.Count - 5} more" : "")}."];

    private static string Refusal(RowFate row) => $"line {row.Line}: {row.Refusal}";

    private static string Fish(int count) => count == 1 ? "1 fish" : $"{count} fish";
}
