using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Finds the derby that somebody means.</summary>
internal static class DerbyFinder
{
    private const int Newest = 20;
    private const int MostNamed = 3;

    /// <summary>
    /// The derby that was named; otherwise the one that is on, their own before others', otherwise the next, otherwise the last.
    /// For what only shows a derby, or says which it took and is easily undone.
    /// </summary>
    public static async Task<Reading<Derby>> FindAsync(Request request, DerbyOptions options, CrewSession session, long? memberId)
    {
        var derbies = new DerbyRepository(session);
        if (request.TryGet(options.Derby, out var said))
        {
            return await NamedAsync(said, derbies, request.At, memberId) is { } named
                ? named
                : new Misread(await NoneCalledAsync(said, derbies));
        }

        return ByLikelihood(await derbies.NewestAsync(Newest, memberId), request.At).FirstOrDefault() is { } meant
            ? meant
            : new Misread("This crew has no derby yet: a steward sets one up with /derby create.");
    }

    /// <summary>The same for what changes something for everybody: where several can be meant it asks which.</summary>
    /// <param name="request">The request.</param>
    /// <param name="options">The options of derby commands.</param>
    /// <param name="session">The crew's book.</param>
    /// <param name="memberId">Of whom to say whether they take part.</param>
    /// <param name="canBeMeant">Whether a derby can be meant; where none can, the likeliest is found, to be told why not.</param>
    public static async Task<Reading<Derby>> FindOnlyAsync(
        Request request, DerbyOptions options, CrewSession session, long? memberId, Func<Derby, bool> canBeMeant)
    {
        if (request.Has(options.Derby))
        {
            return await FindAsync(request, options, session, memberId);
        }

        var newest = await new DerbyRepository(session).NewestAsync(Newest, memberId);
        return ByLikelihood(newest.Where(canBeMeant), request.At).ToList() switch
        {
            [] => await FindAsync(request, options, session, memberId),
            [var only] => only,
            var several => new Misread(Which(request, options, several)),
        };
    }

    /// <summary>A derby of a name that is not over; null where there is none.</summary>
    public static async Task<Derby?> FindLiveAsync(string name, CrewSession session, DateTimeOffset at) =>
        (await new DerbyRepository(session).NewestAsync(Newest, memberId: null)).FirstOrDefault(derby => IsLive(derby, at) && IsCalled(derby, name));

    /// <summary>From the first moment that counts to the last at which word of a fish is taken.</summary>
    public static bool IsOn(Derby derby, DateTimeOffset at) =>
        !derby.IsClosed && at >= derby.Settings.Window.Starts && at <= derby.Settings.Window.LastWord;

    /// <summary>Not over: to come, on, not closed yet, or closed while protests are heard.</summary>
    public static bool IsLive(Derby derby, DateTimeOffset at) => !StewardDesk.IsFinal(derby, at);

    /// <summary>Not over, and begun: there can be entries in it.</summary>
    public static bool HasBegun(Derby derby, DateTimeOffset at) => IsLive(derby, at) && at >= derby.Settings.Window.Starts;

    private static IOrderedEnumerable<Derby> ByLikelihood(IEnumerable<Derby> newest, DateTimeOffset at) => newest
        .OrderBy(derby => derby.IsClosed)
        .ThenByDescending(derby => IsOn(derby, at) && derby.HasJoined)
        .ThenByDescending(derby => IsOn(derby, at))
        .ThenByDescending(derby => derby.Settings.Window.Starts > at);

    // Of those that bore a name it is the one that is not over.
    private static async Task<Derby?> NamedAsync(string said, DerbyRepository derbies, DateTimeOffset at, long? memberId) =>
        IsNumber(said) ? await derbies.FindAsync(long.Parse(said.TrimStart('#'), CultureInfo.InvariantCulture), memberId)
        : (await derbies.NewestAsync(Newest, memberId)).Where(derby => IsCalled(derby, said)).OrderByDescending(derby => IsLive(derby, at)).FirstOrDefault();

    private static async Task<string> NoneCalledAsync(string said, DerbyRepository derbies)
    {
        const string Otherwise = "/derby rules shows the one that is on.";
        return IsNumber(said)
            ? $"There is no derby {said.TrimStart('#')} in this crew. {Otherwise}"
            : $"There is no derby {Quoting.Quote(said)} in this crew. {Nearest.Offer(said, (await derbies.NewestAsync(Newest, memberId: null)).Select(derby => derby.Name), MostNamed, Otherwise)}";
    }

    private static string Which(Request request, DerbyOptions options, List<Derby> several)
    {
        string Typed(Derby derby) => CommandLine.Write(
            request.Path, new Dictionary<string, string>(request.Written) { [options.Derby.Name] = TextOf(derby, several) });
        return $"Which derby? It can be {Listing.Of([.. several.Select(derby => derby.Name)], MostNamed)}. Name it: {string.Join(" or ", several.Take(2).Select(Typed))}";
    }

    // Its name, where that says which one.
    private static string TextOf(Derby derby, List<Derby> several) =>
        IsNumber(derby.Name) || several.Any(other => other != derby && IsCalled(other, derby.Name))
            ? derby.Number.ToString(CultureInfo.InvariantCulture)
            : derby.Name;

    private static bool IsCalled(Derby derby, string name) => RecordSet.Plain(derby.Name) == RecordSet.Plain(name);

    private static bool IsNumber(string said) => said.TrimStart('#') is { Length: > 0 and <= 9 } digits && digits.All(char.IsAsciiDigit);
}
