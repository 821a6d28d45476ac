using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;
using CrewBot.Storage.People;
using CrewBot.Storage.Requests;

namespace CrewBot.Chat.Privacy;

/// <summary>Says what is held on a person, for how long, and what became of it.</summary>
internal static class PrivacyAnswer
{
    private static string Answers => string.Create(
        CultureInfo.InvariantCulture, $"Answers kept for a repeated delivery go after {RequestRepository.Kept.TotalDays:0} days.");

    private static readonly string Elsewhere =
        "Copies of the database that were made with backup hold it until whoever runs CrewBot deletes them; CrewBot makes none by itself.";

    private const string Chat = "Your own messages, and answers that you had posted, lie with the platform: delete them there.";

    public static Reply Shown(IReadOnlyList<HeldRows> held, Request request) => new()
    {
        Headline = $"What this crew's log holds on {request.Caller.Name}",
        Lines =
        [
            $"Your name, platform id, role and units, in one place. Besides, {Counts(held)}.",
            "The crew sees your name and your fish. Spots are shown within the crew alone, coordinates of a water to two decimals.",
            Answers,
            Elsewhere,
        ],
        Figures = [PrivacyFigures.Rows.Of(Rows(held))],
        Actions = [Button("As a file", "export"), Button("Erase", "erase")],
    };

    public static Reply File(IReadOnlyList<HeldRows> held, Request request)
    {
        var day = TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return new Reply
        {
            Headline = $"Everything this crew's log holds on {request.Caller.Name}",
            Lines = [$"{Counts(held)}, as they lie in the database: lengths in nanometres, masses in nanograms, instants in milliseconds since 1970."],
            Figures = [PrivacyFigures.Rows.Of(Rows(held))],
            Files = [new ReplyFile($"held-{day}.json", "application/json", HeldJson.Write(held))],
        };
    }

    public static Reply Asked(IReadOnlyList<HeldRows> held) => new()
    {
        Headline = "Erase what is held on you? Nothing is erased yet",
        Lines =
        [
            $"Held: {Counts(held)}.",
            $"Your fish stay, as a {MemberRepository.Former}'s; name, platform id, notes, photos and times with lines down go, and you come off trips to come. It can't be undone.",
            "Send it again with confirm:yes, or take it with you first with do:export.",
        ],
        Actions = [Button("As a file", "export"), Button("Erase for good", "erase", ("confirm", "yes"))],
    };

    /// <param name="held">What was held.</param>
    /// <param name="posts">How many posts of the bot's own named them.</param>
    /// <param name="copies">How many copies of photos lay here.</param>
    public static Reply Gone(IReadOnlyList<HeldRows> held, int posts, int copies) => new()
    {
        Headline = $"Erased: you are \"{MemberRepository.Former}\" wherever you were named",
        Lines =
        [
            "Your fish stay in the log without name, note or photo.",
            .. posts > 0 ? (string[])[string.Create(CultureInfo.InvariantCulture, $"What the bot posted and names you is edited: {posts}.")] : [],
            .. copies > 0 ? (string[])[string.Create(CultureInfo.InvariantCulture, $"Copies of photos that lay here and are deleted: {copies}.")] : [],
            Elsewhere,
            Chat,
            "If you ask or log again here, you are somebody new.",
        ],
        Figures = [PrivacyFigures.Rows.Of(Rows(held))],
    };

    private static ReplyAction Button(string label, string wish, params (string Name, string Text)[] further) => new(
        label, ActionKind.Run, "crew privacy", further.Prepend(("do", wish)).ToDictionary(option => option.Item1, option => option.Item2));

    private static string Counts(IReadOnlyList<HeldRows> held)
    {
        var counts = held.Where(rows => rows.Table != "member" && rows.Rows.Count > 0).Select(rows => $"{rows.What}: {rows.Rows.Count}").ToList();
        return counts.Count > 0 ? string.Join("; ", counts) : "Nothing else";
    }

    private static double Rows(IReadOnlyList<HeldRows> held) => held.Sum(rows => rows.Rows.Count);
}
