using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.Catches;

/// <summary>Checks what an entry is about to say.</summary>
internal static class CatchDraft
{
    private const string OtherwiseConfirm = "If it is right, send it again with confirm:yes.";

    // Clocks of phones and servers differ a little.
    public static readonly TimeSpan ClocksDiffer = TimeSpan.FromMinutes(2);

    /// <summary>How long the same fish logged again is asked about.</summary>
    public static readonly TimeSpan SameFishWithin = TimeSpan.FromMinutes(1);

    /// <summary>What is wrong or odd with a fish, in a line; null when nothing is.</summary>
    public static string? FaultOf(CatchEntry entry, Species species, bool confirmed, Request request)
    {
        if (entry.CaughtAt > request.At + ClocksDiffer)
        {
            return Moment.StillToCome(entry.CaughtAt, "it was caught", request);
        }

        return !confirmed && OddityOf(entry, species, request) is { } odd ? $"{odd} {OtherwiseConfirm}" : null;
    }

    /// <summary>What is odd with a fish, though it may be right, in a line; null when nothing is.</summary>
    public static string? OddityOf(CatchEntry entry, Species species, Request request)
    {
        if (entry.Length is not { } length)
        {
            return null;
        }

        if (length.Length > Plausibility.LongestLength(species))
        {
            return $"{CatchWords.Length(length, request.Units)} is longer than any {species.Name} one expects.";
        }

        if (entry.Girth is { } girth && girth.Nanometres >= length.Nanometres)
        {
            return $"A girth of {CatchWords.Length(girth, request.Units)} is no less than the length of {CatchWords.Length(length, request.Units)}.";
        }

        var expected = Plausibility.ExpectedWeight(species, length.Length);
        return entry.Weight is { } weight && !expected.Contains(weight.Mass)
            ? $"{CatchWords.Weight(weight, request)} does not fit a {species.Name} of {CatchWords.Length(length, request.Units)}: from {request.Show.Fish(expected.Low)} to {request.Show.Fish(expected.High)} is expected."
            : null;
    }

    /// <summary>Asks when the same fish seems to be logged twice; null when it does not.</summary>
    public static string? TwiceOf(CatchEntry entry, NewestCatch? last, bool confirmed) =>
        !confirmed && last is not null && last.Species == entry.Species && last.LengthNm == entry.Length?.Nanometres
            && last.WeightNg == entry.Weight?.Nanograms && (entry.LoggedAt - last.LoggedAt).Duration() < SameFishWithin
            ? $"That looks like #{last.Number}, logged within the last minute. If it is another fish, send it again with confirm:yes."
            : null;
}
