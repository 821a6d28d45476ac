using System.Globalization;

namespace CrewBot.EndToEnd.Tests;

/// <summary>How often the crash tests kill the program.</summary>
internal static class Kills
{
    /// <summary>30, or what <c>CRASH_TEST_KILLS</c> says.</summary>
    public static int Count { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("CRASH_TEST_KILLS"), CultureInfo.InvariantCulture, out var more) ? more : 30;
}
