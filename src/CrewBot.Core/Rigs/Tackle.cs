using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>What an angler has to tie rigs from. Swivels, snaps and bait are not counted: everybody has some.</summary>
public sealed record Tackle
{
    private const double SameWithin = 1e-3;

    /// <summary>Lines on reels.</summary>
    public IReadOnlyList<LineChoice> Lines { get; init; } = [];

    /// <summary>Leader material, wire among it.</summary>
    public IReadOnlyList<LineChoice> Leaders { get; init; } = [];

    /// <summary>Lures, jigs and sinkers. They come with their hooks.</summary>
    public IReadOnlyList<Lure> Lures { get; init; } = [];

    /// <summary>Loose hooks, for bait without a lure.</summary>
    public IReadOnlyList<HookSize> Hooks { get; init; } = [];

    /// <summary>The same and more.</summary>
    public Tackle With(Tackle more) => new()
    {
        Lines = [.. Lines, .. more.Lines],
        Leaders = [.. Leaders, .. more.Leaders],
        Lures = [.. Lures, .. more.Lures],
        Hooks = [.. Hooks, .. more.Hooks],
    };

    /// <summary>Whether everything that another tackle has is in this one.</summary>
    public bool Holds(Tackle other) =>
        other.Lines.All(line => Lines.Any(own => IsSame(own, line)))
        && other.Leaders.All(leader => Leaders.Any(own => IsSame(own, leader)))
        && other.Lures.All(lure => Lures.Any(own => own.Presentation.Key == lure.Presentation.Key && own.Material.Key == lure.Material.Key && IsSame(own.Weight, lure.Weight)))
        && other.Hooks.All(Hooks.Contains);

    /// <summary>What a rig is tied from.</summary>
    public static Tackle Of(Rig rig) => new()
    {
        Lines = [rig.Tied.Mainline],
        // The stretch below a swivel may be the mainline's own.
        Leaders = rig.Tied.Leader is { Line: var line } && line.Material.Key != rig.Tied.Mainline.Material.Key ? [line] : [],
        Lures = [rig.Lure],
        Hooks = rig.HookComesWithLure ? [] : [rig.Hook],
    };

    /// <summary>Each thing by itself.</summary>
    internal IEnumerable<Tackle> Pieces() =>
    [
        .. Lines.Select(line => new Tackle { Lines = [line] }),
        .. Leaders.Select(leader => new Tackle { Leaders = [leader] }),
        .. Lures.Select(lure => new Tackle { Lures = [lure] }),
        .. Hooks.Select(hook => new Tackle { Hooks = [hook] }),
    ];

    // Quantities come out of boxes in other units than out of tables: equal is what a label can't tell apart.
    private static bool IsSame(LineChoice one, LineChoice other) =>
        one.Material.Key == other.Material.Key && Math.Abs(one.Test.Newtons - other.Test.Newtons) <= SameWithin * other.Test.Newtons;

    private static bool IsSame(Mass one, Mass other) => Math.Abs(one.Kilograms - other.Kilograms) <= SameWithin * other.Kilograms;
}
