namespace CrewBot.Drawing.Charts;

/// <summary>Signs that tell lines apart without colour, in the path language of SVG.</summary>
internal static class Markers
{
    public const string Disc = "M-10 0A10 10 0 1 0 10 0A10 10 0 1 0 -10 0Z";

    public const string Ring = "M-10 0A10 10 0 1 0 10 0A10 10 0 1 0 -10 0ZM-4.5 0A4.5 4.5 0 1 1 4.5 0A4.5 4.5 0 1 1 -4.5 0Z";

    public const string Square = "M-9 -9H9V9H-9Z";

    public const string Triangle = "M0 -11L11 9H-11Z";

    public const string Diamond = "M0 -12L10 0L0 12L-10 0Z";

    public const string Cross = "M-10 -6L-6 -10L0 -4L6 -10L10 -6L4 0L10 6L6 10L0 4L-6 10L-10 6L-4 0Z";

    /// <summary>One a line, in this order.</summary>
    public static readonly IReadOnlyList<string> ByPlace = [Disc, Square, Triangle, Diamond, Ring, Cross];
}
