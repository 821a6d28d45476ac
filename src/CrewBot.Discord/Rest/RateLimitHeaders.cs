using System.Globalization;
using System.Net.Http.Headers;

namespace CrewBot.Discord.Rest;

/// <summary>What an answer says of its bucket. Every part may be missing; absolute reset times are never used.</summary>
internal readonly record struct RateLimitHeaders(
    string? Bucket, int? Limit, int? Remaining, TimeSpan? ResetAfter, TimeSpan? RetryAfter, bool Global, bool Shared)
{
    private static readonly TimeSpan Longest = TimeSpan.FromDays(1);

    public bool Known => Limit is not null && Remaining is not null && ResetAfter is not null;

    public static RateLimitHeaders Read(HttpResponseHeaders headers) => new(
        Text(headers, "X-RateLimit-Bucket"),
        Whole(headers, "X-RateLimit-Limit"),
        Whole(headers, "X-RateLimit-Remaining"),
        Seconds(headers, "X-RateLimit-Reset-After"),
        Seconds(headers, "Retry-After"), // read raw: the typed property refuses decimals
        Text(headers, "X-RateLimit-Global") is not null || Text(headers, "X-RateLimit-Scope") is "global",
        Text(headers, "X-RateLimit-Scope") is "shared");

    /// <summary>A wait from a figure in seconds; nothing for what is no sensible wait.</summary>
    public static TimeSpan? Wait(double? seconds) =>
        seconds is >= 0 and <= double.MaxValue
            ? TimeSpan.FromSeconds(Math.Min(seconds.Value, Longest.TotalSeconds))
            : null;

    private static string? Text(HttpResponseHeaders headers, string name) =>
        headers.NonValidated.TryGetValues(name, out var values) ? values.ToString() : null;

    private static int? Whole(HttpResponseHeaders headers, string name) =>
        int.TryParse(Text(headers, name), NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : null;

    private static TimeSpan? Seconds(HttpResponseHeaders headers, string name) =>
        double.TryParse(Text(headers, name), NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? Wait(value)
            : null;
}
