using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.CatchFiles;

/// <summary>
/// What the log has already. A row with a number is known by it and must say the same; a row without one is known when the
/// angler has a fish of the same species, instant and size.
/// </summary>
internal sealed class KnownFish
{
    private readonly string _importer;
    private readonly IReadOnlyList<CrewMember> _people;
    private readonly Dictionary<string, string> _waters = [];
    private readonly Dictionary<long, FileCatch> _byNumber;
    private readonly Dictionary<object, int> _bySize = [];
    private readonly HashSet<long> _numbersInFile = [];

    public KnownFish(string importer, IReadOnlyList<LoggedCatch> log, IReadOnlyList<CrewMember> people, IReadOnlyList<Water> waters)
    {
        _importer = importer;
        _people = people;
        foreach (var water in waters)
        {
            foreach (var name in water.Names)
            {
                _waters.TryAdd(RecordSet.Plain(name), water.Name);
            }
        }

        _byNumber = log.ToDictionary(logged => logged.Number, FileCatch.Of);
        foreach (var fish in _byNumber.Values)
        {
            var size = SizeOf(fish);
            _bySize[size] = _bySize.GetValueOrDefault(size) + 1;
        }
    }

    /// <summary>Decides about a fish; the same fish must be asked about once only.</summary>
    public RowFate FateOf(int line, FileCatch read)
    {
        var fish = read with { AnglerId = IdOf(read), Water = read.Water is { } water ? _waters.GetValueOrDefault(RecordSet.Plain(water), water) : null };
        if (fish.Number is not { } number)
        {
            return new RowFate(line, fish, null, TakeSameSize(fish));
        }

        if (!_numbersInFile.Add(number))
        {
            return RowFate.Refused(line, $"number {number} stands in the file twice.");
        }

        return !_byNumber.TryGetValue(number, out var logged) ? new RowFate(line, fish, null, IsKnown: false)
            : IsSame(logged, fish) ? new RowFate(line, fish, null, IsKnown: true)
            : RowFate.Refused(line, $"#{number} is in the log and says otherwise: leave the number out to add it as another fish.");
    }

    // People are known by the platform's id; a file made by hand has names only.
    private string? IdOf(FileCatch fish) => fish switch
    {
        { AnglerId: { } id } => id,
        { Angler: null } => _importer,
        { Angler: MemberRepository.Former } => null,
        { Angler: { } name } => _people.FirstOrDefault(person => person.Name.Equals(name, StringComparison.OrdinalIgnoreCase))?.PlatformId ?? name,
    };

    // Names change; who it is does not. The spelling of a spot is the crew's.
    private static bool IsSame(FileCatch logged, FileCatch fish) =>
        logged with { Angler = null, Spot = Plain(logged.Spot) } == fish with { Angler = null, Spot = Plain(fish.Spot) };

    private bool TakeSameSize(FileCatch fish)
    {
        var size = SizeOf(fish);
        if (_bySize.GetValueOrDefault(size) is var left and > 0)
        {
            _bySize[size] = left - 1;
            return true;
        }

        return false;
    }

    private static object SizeOf(FileCatch fish) => (
        fish.AnglerId, fish.Entry.Species, fish.Entry.CaughtAt.UtcTicks, fish.Entry.Length?.Nanometres, fish.Entry.Weight?.Nanograms);

    private static string? Plain(string? name) => name is null ? null : RecordSet.Plain(name);
}
