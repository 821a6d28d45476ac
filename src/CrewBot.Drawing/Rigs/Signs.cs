namespace CrewBot.Drawing.Rigs;

/// <summary>Signs for the parts of a rig, in the path language of SVG, each around the line it hangs on.</summary>
internal static class Signs
{
    public const string Reel = "M-18 0A18 18 0 1 0 18 0A18 18 0 1 0 -18 0M-6 0A6 6 0 1 0 6 0A6 6 0 1 0 -6 0M18 -2L28 -12";

    public const string Knot = "M0 -13L11 0L0 13L-11 0Z";

    public const string Swivel = "M0 -22A7 7 0 1 1 0 -8A7 7 0 1 1 0 -22M-5 -8H5V8H-5ZM0 8A7 7 0 1 1 0 22A7 7 0 1 1 0 8";

    public const string Snap = "M0 -20C13 -16 11 16 0 20C-11 16 -13 -16 0 -20M5 -6L-7 10";

    public const string SplitRing = "M-13 0A13 13 0 1 0 13 0A13 13 0 1 0 -13 0M-8 0A8 8 0 1 0 8 0A8 8 0 1 0 -8 0";

    public const string Shot = "M-11 0A11 11 0 1 0 11 0A11 11 0 1 0 -11 0Z";

    public const string Sinker = "M0 -22C13 -10 15 18 0 20C-15 18 -13 -10 0 -22Z";

    public const string Hook = "M0 -14V10C0 27 -22 27 -22 8L-14 15M0 -14A5 5 0 1 0 0 -24A5 5 0 1 0 0 -14";

    public const string Treble = "M0 -16V8C0 24 -19 24 -19 8L-12 14M0 8C0 24 19 24 19 8L12 14M0 8V20";

    /// <summary>Points at the weakest link from the left.</summary>
    public const string Pointer = "M-26 -13L0 0L-26 13L-19 0Z";

    public const string Bait = "M0 -17C11 -14 11 14 0 17C-11 14 -11 -14 0 -17Z";

    /// <summary>A lure far away, its tip where it hangs.</summary>
    public const string Hung = "M0 -30C11 -20 10 -8 0 0C-10 -8 -11 -20 0 -30Z";

    // One unit high, hung by the nose: whoever draws it scales it to the lure's length.
    public const string Spoon = "M0 0C0.10 0.10 0.19 0.42 0.17 0.66C0.15 0.86 0.08 0.97 0 1C-0.08 0.97 -0.15 0.86 -0.17 0.66C-0.19 0.42 -0.10 0.10 0 0Z";

    public const string Jig = "M-0.13 0.13A0.13 0.13 0 1 0 0.13 0.13A0.13 0.13 0 1 0 -0.13 0.13ZM-0.075 0.2C-0.11 0.5 -0.05 0.8 0.02 1C0.07 0.8 0.11 0.5 0.075 0.2Z";

    public const string JigHook = "M0 0.24V0.62C0 0.86 -0.25 0.86 -0.25 0.6L-0.17 0.68";

    public const string Swimmer = "M0 0C0.11 0.08 0.16 0.26 0.14 0.44C0.12 0.64 0.06 0.76 0.03 0.84L0.12 1H-0.12L-0.03 0.84C-0.06 0.76 -0.12 0.64 -0.14 0.44C-0.16 0.26 -0.11 0.08 0 0Z";

    public const string DeadFish = "M0 0C-0.09 0.05 -0.13 0.2 -0.125 0.34L-0.19 0.46L-0.11 0.5C-0.09 0.64 -0.05 0.76 -0.03 0.84L-0.11 1C-0.04 0.96 0.04 0.96 0.11 1L0.03 0.84C0.06 0.74 0.11 0.58 0.125 0.38C0.13 0.22 0.09 0.05 0 0Z";
}
