namespace CrewBot.Core.Trips.Seating;

/// <summary>Blocks in their shelters, and what it costs so far; placing and taking away are cheap and undo each other.</summary>
internal sealed class SeatedBlocks
{
    public const int Nowhere = -1;

    private readonly int[] _inside;
    private readonly int[] _smokers;
    private readonly int[] _askers;

    public SeatedBlocks(SeatingModel model)
    {
        Model = model;
        At = new int[model.Size.Length];
        Array.Fill(At, Nowhere);
        Free = [.. model.Seats];
        _inside = new int[model.Seats.Length];
        _smokers = new int[model.Seats.Length];
        _askers = new int[model.Seats.Length];
        Unmet = model.AlwaysUnmet;
    }

    public SeatingModel Model { get; }

    /// <summary>The shelter of each block.</summary>
    public int[] At { get; }

    /// <summary>Free seats of each shelter.</summary>
    public int[] Free { get; }

    public int Moved { get; private set; }

    public int Unmet { get; private set; }

    public int InSmoke { get; private set; }

    /// <summary>Shelters with somebody in them.</summary>
    public int Used { get; private set; }

    public bool IsEmpty(int shelter) => _inside[shelter] == 0;

    public bool IsSmoky(int shelter) => _smokers[shelter] > 0;

    public int AskersIn(int shelter) => _askers[shelter];

    /// <summary>A seating that is known.</summary>
    public static SeatedBlocks Of(SeatingModel model, int[] at)
    {
        var seated = new SeatedBlocks(model);
        for (var block = 0; block < at.Length; block++)
        {
            seated.Place(block, at[block]);
        }

        return seated;
    }

    /// <summary>What it costs so far, weighed.</summary>
    public long Cost() => Cost(Used);

    /// <summary>What it costs so far, weighed, when so many shelters come.</summary>
    public long Cost(int hauled) => Model.Weigh(Moved, Unmet, InSmoke, hauled);

    /// <summary>Wishes that come to be unmet when a block sits there, as far as the others are placed.</summary>
    public int UnmetBy(int block, int shelter)
    {
        var unmet = 0;
        foreach (var (other, count) in Model.Together[block])
        {
            unmet += At[other] != Nowhere && At[other] != shelter ? count : 0;
        }

        foreach (var (other, count) in Model.Apart[block])
        {
            unmet += At[other] == shelter ? count : 0;
        }

        return unmet;
    }

    public void Place(int block, int shelter)
    {
        Moved += Model.Moves[block][shelter];
        Unmet += UnmetBy(block, shelter);
        InSmoke -= SmokeIn(shelter);
        Used += _inside[shelter] == 0 ? 1 : 0;
        Count(block, shelter, 1);
        InSmoke += SmokeIn(shelter);
        At[block] = shelter;
    }

    public void Take(int block)
    {
        var shelter = At[block];
        At[block] = Nowhere;
        InSmoke -= SmokeIn(shelter);
        Count(block, shelter, -1);
        InSmoke += SmokeIn(shelter);
        Used -= _inside[shelter] == 0 ? 1 : 0;
        Unmet -= UnmetBy(block, shelter);
        Moved -= Model.Moves[block][shelter];
    }

    /// <summary>How many more breathe smoke when a block sits there, as far as the others are placed.</summary>
    public int SmokeBy(int block, int shelter) => Model.Smokers[block] > 0 && !IsSmoky(shelter)
        ? Model.Askers[block] + _askers[shelter]
        : IsSmoky(shelter) ? Model.Askers[block] : 0;

    private int SmokeIn(int shelter) => _smokers[shelter] > 0 ? _askers[shelter] : 0;

    private void Count(int block, int shelter, int sign)
    {
        Free[shelter] -= sign * Model.Size[block];
        _inside[shelter] += sign;
        _smokers[shelter] += sign * Model.Smokers[block];
        _askers[shelter] += sign * Model.Askers[block];
    }
}
