using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Ice;

/// <summary>
/// Tells follower channels of a report, in the transaction that files it. One post a report and channel: a correction edits
/// it, struck through with the reason.
/// </summary>
internal sealed class IceRelay(CrewSession session, Request request, string water)
{
    private readonly IceFollowerRepository _followers = new(session);
    private readonly PostRepository _posts = new(session);

    /// <summary>What the post of a report in a channel is known by.</summary>
    public static string KeyOf(long number, string channel) => $"ice/{number}/{channel}";

    /// <summary>Tells everybody who follows the water now.</summary>
    /// <returns>How many channels.</returns>
    public async Task<int> TellAsync(FiledIce filed)
    {
        var channels = await _followers.ChannelsAsync(filed.Entry.WaterId);
        var manner = new PostManner { Notifies = filed.Entry.Page.Hazards.Any(hazard => hazard.IsUrgent()) };
        foreach (var channel in channels)
        {
            await _followers.NoteAsync(filed.Number, channel);
            await SayAsync(filed.Number, channel, CardOf(filed, channel), manner);
        }

        return channels.Count;
    }

    /// <summary>Puts a correction on every copy: what no longer holds is struck through.</summary>
    public async Task<int> CorrectAsync(FiledIce before, FiledIce now, string reason)
    {
        var channels = await _followers.ToldAsync(now.Number);
        foreach (var channel in channels)
        {
            // Whoever shares no more is corrected all the same, and learns nothing else of the place.
            var card = CardOf(now, channel with { ShowsSpot = channel.ShowsSpot && (channel.MayLearnMore || IsOfTheSamePlace(before, now)) });
            await SayAsync(now.Number, channel, card with
            {
                Headline = $"Corrected: {card.Headline}",
                Struck = StruckOf(before, channel),
                Lines = [$"Reason: {reason}", .. card.Lines],
            });
        }

        return channels.Count;
    }

    /// <summary>Strikes a withdrawn report through on every copy.</summary>
    public async Task<int> StrikeAsync(FiledIce before, string reason)
    {
        var channels = await _followers.ToldAsync(before.Number);
        foreach (var channel in channels)
        {
            var card = CardOf(before, channel);
            await SayAsync(before.Number, channel, card with
            {
                Headline = $"Withdrawn: ice report #{before.Number}, {water}",
                Struck = StruckOf(before, channel),
                Lines = [$"Reason: {reason}", "Nothing is to be read out of it."],
            });
        }

        return channels.Count;
    }

    /// <summary>Adds to every copy that a steward closed the bad news.</summary>
    public async Task<int> CloseAsync(FiledIce filed, long with, string reason)
    {
        var channels = await _followers.ToldAsync(filed.Number);
        foreach (var channel in channels)
        {
            var card = CardOf(filed, channel);
            await SayAsync(filed.Number, channel, card with
            {
                Headline = $"Closed: {card.Headline}",
                Lines = [$"A steward closed it after measurement #{with}: {reason}", .. card.Lines],
            });
        }

        return channels.Count;
    }

    private Task SayAsync(long number, IceChannel channel, Reply card, PostManner? manner = null) =>
        _posts.SayAsync(KeyOf(number, channel.Channel), channel.Channel, ReplyJson.Write(card), request.At, manner);

    private static bool IsOfTheSamePlace(FiledIce before, FiledIce now) =>
        (before.Entry.Spot, before.Entry.Page.From, before.Entry.Page.Note, before.Entry.Page.Quote)
        == (now.Entry.Spot, now.Entry.Page.From, now.Entry.Page.Note, now.Entry.Page.Quote);

    private string[] StruckOf(FiledIce before, IceChannel channel) => [$"{Place(before, channel)}: {IceSheet.Found(before, water, request.Units)}"];

    private string Place(FiledIce filed, IceChannel channel) =>
        filed.Entry.Spot is null ? water : channel.ShowsSpot ? $"{water}, {filed.Entry.Spot}" : $"{water} (the spot is not shared)";

    private Reply CardOf(FiledIce filed, IceChannel channel)
    {
        // A note or a quote may name the spot as well, and so does where a walk-out starts.
        var shown = channel.ShowsSpot ? filed : filed with { Entry = filed.Entry with { Page = filed.Entry.Page with { Note = null, From = null } } };
        string?[] lines =
        [
            $"{IceSheet.Found(shown, water, request.Units)}.",
            IceSheet.CountsAs(shown, water, request.Units),
            IceSheet.Beside(shown, request),
            $"By {IceSheet.Source(shown)}{Crew(channel)}; {When(shown)}. Report #{filed.Number}.",
            channel.ShowsSpot && filed.Entry.Page.Quote is { } quote ? string.Join(" ", new[] { quote.Text, quote.Link }.Where(part => part is not null)) : null,
        ];
        return new Reply
        {
            Headline = $"Ice report: {Place(filed, channel)}",
            Lines = [.. lines.Where(line => !string.IsNullOrWhiteSpace(line)).Select(line => line!)],
            Cautions = IceCautions.Of(filed.ToReport().IsBadNews),
            Audience = Audience.Crew,
        };
    }

    // Whoever shares no more is not told what the crew is called by now.
    private string Crew(IceChannel channel) => channel.Partner is null ? ""
        : channel.MayLearnMore && request.Caller.CrewName is { } name ? $" of {name}"
        : " of a partner crew";

    private string When(FiledIce filed) => filed.Entry.MeasuredAt is { } measured
        ? $"measured {TimeZoneInfo.ConvertTime(measured, request.Caller.Zone):yyyy-MM-dd HH:mm} {ClockOf(request.Caller.Zone)}"
        : "nobody said when it was measured";

    // "America/Chicago" reads as "Chicago time".
    private static string ClockOf(TimeZoneInfo zone) => zone.Id.LastIndexOf('/') is var slash && slash < 0
        ? zone.Id
        : $"{zone.Id[(slash + 1)..].Replace('_', ' ')}{(zone.Id.StartsWith("Etc/", StringComparison.Ordinal) ? "" : " time")}";
}
