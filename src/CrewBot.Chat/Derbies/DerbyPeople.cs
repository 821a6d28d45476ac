using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Derbies;

/// <summary>Finds whom a question is about.</summary>
internal static class DerbyPeople
{
    /// <summary>The angler who is named; whoever asks when nobody is.</summary>
    public static async Task<Reading<long>> FindAsync(Request request, DerbyOptions options, CrewSession session, DerbySheet sheet)
    {
        if (!request.TryGet(options.Person, out var name))
        {
            return await new MemberRepository(session).FindAsync(request.Caller.Member) is { } own && sheet.CompetitorOf(own.Id) is not null
                ? own.Id
                : new Misread($"You are not in {sheet.Derby.Name}: name somebody, such as person:{sheet.Names.GetValueOrDefault(sheet.Board.Anglers.FirstOrDefault().Angler, "Ana")}");
        }

        var crew = await new MemberRepository(session).AllAsync();
        return PersonMeant.Fitting(name, sheet.Board.Anglers.Select(one => PersonMeant.Known(one.Angler, sheet.Names[one.Angler], crew))) switch
        {
            [var only] => only.Id,
            [_, ..] several => new Misread(PersonMeant.Which(options.Person, name, several)),
            _ => new Misread($"{Quoting.Quote(name)} is not in {sheet.Derby.Name}. Nearest: {string.Join(", ", Nearest.To(name, sheet.Board.Anglers.Select(one => sheet.Names[one.Angler]), 3))}."),
        };
    }
}
