namespace CrewBot.Drawing.Sheets;

/// <summary>A rectangle, in pixels from the top left.</summary>
internal readonly record struct Box(float Left, float Top, float Right, float Bottom)
{
    public float Width => Right - Left;

    public float Height => Bottom - Top;

    public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Box other) => Left <= other.Left && Top <= other.Top && Right >= other.Right && Bottom >= other.Bottom;
}
