namespace CrewBot.Core.Ice.Posts;

/// <summary>Holds what a post says in all against what it says in part.</summary>
internal static class PostLayers
{
    private const double Close = 1e-6;

    /// <summary>Whether a total is less than its parts together.</summary>
    public static bool Contradict(IReadOnlyList<PostFound> found) =>
        found.Any(total => total.IsTotal && PartsOf(total, found).Sum(part => part.Least) > total.Most + Close);

    /// <summary>Leaves out what says again in all what the layers say one by one.</summary>
    public static IEnumerable<PostFound> WithoutTotals(IReadOnlyList<PostFound> found) => !found.Any(IsLayer) ? found
        : found.Where(whole => !(whole.Kind == IceKind.Unknown && PartsOf(whole, found) is { Count: > 1 } parts && Math.Abs(parts.Sum(part => part.Least) - whole.Least) < Close)
            && !(whole.IsTotal && PartsOf(whole, found).Count > 0 && !Contradict(found)));

    private static bool IsLayer(PostFound found) => found.Kind is IceKind.Clear or IceKind.White;

    private static List<PostFound> PartsOf(PostFound total, IReadOnlyList<PostFound> found) =>
        [.. found.Where(part => !ReferenceEquals(part, total) && IsLayer(part) && (part.Place is null || total.Place is null || part.Place == total.Place))];
}
