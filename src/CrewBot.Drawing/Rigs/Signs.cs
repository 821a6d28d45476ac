namespace CrewBot.Drawing.Rigs;

/// <summary>Signs for the parts of a rig, in the path language of SVG, each around the line it hangs on.</summary>
internal static class Signs
{
    public const string Reel = "M-18 0A18 18 0 1 0 18 0A18 18 0 1 0 -18 0M-7 0A7 7 0 1 0 7 0A7 7 0 1 0 -7 0";

    public const string Knot = "M0 -13L11 0L0 13L-11 0Z";

    public const string Swivel = "M0 -22A7 7 0 1 1 0 -8A7 7 0 1 1 0 -22M-5 -8H5V8H-5ZM0 8A7 7 0 1 1 0 22A7 7 0 1 1 0 8";

    public const string Snap = "M0 -20C13 -16 11 16 0 20C-11 16 -13 -16 0 -20M5 -6L-7 10";

    public const string SplitRing = "M-13 0A13 13 0 1 0 13 0A13 13 0 1 0 -13 0M-8 0A8 8 0 1 0 8 0A8 8 0 1 0 -8 0";

    public const string Shot = "M-10 0A10 10 0 1 0 10 0A10 10 0 1 0 -10 0M-10 0H10";

    public const string Sinker = "M0 -22C13 -10 15 18 0 20C-15 18 -13 -10 0 -22Z";

    public const string Hook = "M0 -22V10C0 26 -20 26 -20 8L-13 15";

    public const string Treble = "M0 -22V10C0 26 -20 26 -20 8L-13 15M0 10C0 26 20 26 20 8L13 15M0 10V22";

    public const string Crack = "M-24 -9L-8 4L2 -7L22 9";

    public const string Bait = "M-4 -14C12 -8 12 10 0 16C-12 10 -10 -6 -4 -14ZM0 16L-9 26M0 16L9 26";

    // One unit high, hung by the nose: whoever draws it scales it to the lure's length.
    public const string Spoon = "M0 0C0.16 0.18 0.22 0.62 0 1C-0.22 0.62 -0.16 0.18 0 0Z";

    public const string Jig = "M0 0A0.17 0.17 0 1 1 0 0.34A0.17 0.17 0 1 1 0 0ZM-0.04 0.3V0.78C-0.04 1.04 -0.4 1.04 -0.4 0.74L-0.3 0.84L-0.36 0.7C-0.34 0.92 -0.12 0.92 -0.12 0.74V0.3Z";

    public const string Swimmer = "M0 0C0.2 0.12 0.24 0.5 0.06 0.8L0.16 1H-0.16L-0.06 0.8C-0.24 0.5 -0.2 0.12 0 0Z";

    public const string DeadFish = "M0 0.02C0.2 0.14 0.24 0.55 0.06 0.82L0.2 1H-0.2L-0.06 0.82C-0.24 0.55 -0.2 0.14 0 0.02ZM0.17 0.4L0.3 0.52L0.16 0.56Z";
}
