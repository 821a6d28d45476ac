using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Lays a reply out as a card: headline, lines, then the cautions, which are never cut away to make room for the rest.
/// </summary>
internal sealed class CardWriter(ButtonRows buttons)
{
    private const int AnswerColour = 0x2E86AB;
    private const int CautionColour = 0xD98E04;
    private const int ProblemColour = 0x808890;
    private const int FiguresInALine = 4;
    private const int MostForCautions = Limits.CardText / 2;

    public Card Write(Reply reply, CardPurpose purpose)
    {
        if (reply.Problem is { } problem)
        {
            return Plain(problem, buttons.Of(reply, CardPurpose.Answer));
        }

        purpose = Possible(purpose, reply);
        var isPrivate = purpose is CardPurpose.Why or CardPurpose.Picture || (purpose is CardPurpose.Answer && reply.Audience is Audience.Asker);
        var embed = new Embed
        {
            Title = NullIfEmpty(Shortening.Fit(Markdown.Escape(reply.Headline), Limits.Title)),
            Description = DescriptionOf(reply, purpose),
            Color = reply.Cautions.Count > 0 ? CautionColour : AnswerColour,
        };
        var files = Uploads(reply, purpose);
        var body = Body(embed, buttons.Of(reply, purpose), files);
        if (Snowflake.TryParse(reply.Calls, out var role))
        {
            body = body with { Content = $"<@&{role}>", AllowedMentions = new AllowedMentions { Roles = [role] } };
        }

        return new Card(body, isPrivate, IsProblem: false) { Files = files };
    }

    /// <summary>One private line that is no answer.</summary>
    public static Card Plain(string line) => Plain(line, []);

    private static Card Plain(string line, List<Component> rows) => new(
        Body(new Embed { Description = Text([], [line], []), Color = ProblemColour }, rows, []), IsPrivate: true, IsProblem: true);

    // Where nothing could be drawn, the words are what there is.
    private static CardPurpose Possible(CardPurpose purpose, Reply reply) => purpose switch
    {
        CardPurpose.Picture when !reply.Files.Any(file => file.IsPicture) => CardPurpose.Answer,
        CardPurpose.SharedPicture when !reply.Files.Any(file => file.IsPicture) => CardPurpose.Shared,
        _ => purpose,
    };

    private static string? DescriptionOf(Reply reply, CardPurpose purpose) => purpose switch
    {
        CardPurpose.Why => Text([], Reasons(reply), reply.Cautions),
        CardPurpose.Picture or CardPurpose.SharedPicture => reply.Cautions.Count > 0 ? Text([], [], reply.Cautions) : null,
        _ => Text(reply.Struck, reply.Lines, reply.Cautions),
    };

    private static IReadOnlyList<string> Reasons(Reply reply) =>
        reply.Reasons.Count + reply.Figures.Count > 0
            ? [.. reply.Reasons, .. Workings(reply.Figures)]
            : ["There is nothing more behind this answer."];

    // Files are for whoever asked: the crew is shown the card alone.
    private static IReadOnlyList<Upload> Uploads(Reply reply, CardPurpose purpose) => reply.Files.Count == 0 ? [] :
    [
        .. reply.Files
            .Where(file => file.IsPicture ? purpose is CardPurpose.Picture or CardPurpose.SharedPicture : purpose is CardPurpose.Answer)
            .Select(file => new Upload(file.Name, file.ContentType, file.Content) { Description = Shown(file.AlternativeText) }),
    ];

    private static string? Shown(string? alternativeText) =>
        alternativeText is null ? null : Shortening.Fit(alternativeText, Limits.FileDescription);

    private static IReadOnlyList<AttachmentPlaceholder>? Placeholders(IReadOnlyList<Upload> files) => files.Count == 0
        ? null
        : [.. files.Select((file, index) => new AttachmentPlaceholder { Id = Id(index), Filename = file.Name, Description = file.Description })];

    private static string Id(int index) => index.ToString(CultureInfo.InvariantCulture);

    // The figures of the alternatives explain nothing in this answer.
    private static IEnumerable<string> Workings(IReadOnlyList<Figure> figures) => figures
        .Where(figure => !figure.Key.StartsWith("alt", StringComparison.Ordinal))
        .Select(figure => string.Create(CultureInfo.InvariantCulture, $"{figure.Key} {figure.Value:0.###} {figure.Unit}"))
        .Chunk(FiguresInALine)
        .Select(few => string.Join(" · ", few));

    private static string Text(IReadOnlyList<string> struck, IReadOnlyList<string> lines, IReadOnlyList<string> cautions)
    {
        var warnings = new List<string>(cautions.Count);
        foreach (var caution in cautions)
        {
            warnings.Add($"⚠️ {Markdown.Escape(caution)}");
        }

        var answers = new List<string>(struck.Count + lines.Count);
        foreach (var line in struck)
        {
            answers.Add($"~~{Markdown.Escape(line)}~~");
        }

        foreach (var line in lines)
        {
            answers.Add(Markdown.Escape(line));
        }

        var below = Shortening.FitLines(warnings, MostForCautions);
        var room = Limits.CardText - below.Length - (below.Length > 0 ? 2 : 0);
        var above = Shortening.FitLines(answers, room);
        var text = below.Length == 0 ? above : above.Length == 0 ? below : $"{above}\n\n{below}";
        return string.IsNullOrWhiteSpace(text) ? "(nothing to show)" : text;
    }

    private static MessageBody Body(Embed embed, List<Component> rows, IReadOnlyList<Upload> files) => new()
    {
        Embeds = [embed],
        AllowedMentions = AllowedMentions.Nobody,
        Components = rows, // stated even when empty: an update must take old buttons away
        Attachments = Placeholders(files),
    };

    private static string? NullIfEmpty(string text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
