namespace CrewBot.Core.Trips.Seating;

/// <summary>In which order blocks are seated: those who tie the others' hands first.</summary>
internal static class SeatingOrder
{
    /// <summary>Owners of several shelters, then whoever has most wishes with those before, then the large and the choosy.</summary>
    /// <param name="standing">Who is to be ordered.</param>
    /// <param name="seated">Who sits already.</param>
    public static int[] Of(int[] standing, SeatedBlocks seated)
    {
        var model = seated.Model;
        var left = standing.ToList();
        var ordered = new List<int>(left.Count);
        var tied = Array.ConvertAll(model.Together, ties => ties.Where(tie => seated.At[tie.Other] != SeatedBlocks.Nowhere).Sum(tie => tie.Count));
        while (left.Count > 0)
        {
            var next = left.MaxBy(block => (
                model.Own[block].Length > 1, model.Size[block] > 1, tied[block], model.Size[block],
                model.Together[block].Length + model.Apart[block].Length, -block));
            left.Remove(next);
            ordered.Add(next);
            foreach (var (other, count) in model.Together[next].Concat(model.Apart[next]))
            {
                tied[other] += count;
            }
        }

        return [.. ordered];
    }
}
