using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Derbies;

/// <summary>Registers the derby commands.</summary>
internal static class DerbyServices
{
    public static IServiceCollection AddDerbies(this IServiceCollection services) => services
        .AddSingleton<DerbyOptions>()
        .AddSingleton<DerbyBoards>()
        .AddSingleton<DerbyPosts>()
        .AddSingleton<DerbyQuestion>()
        .AddSingleton<ICommandHandler, CreateDerby>()
        .AddSingleton<ICommandHandler, ShowRules>()
        .AddSingleton<ICommandHandler, JoinDerby>()
        .AddSingleton<ICommandHandler, ChangeTeam>()
        .AddSingleton<ICommandHandler, LeaveDerby>()
        .AddSingleton<ICommandHandler, EnterDerby>()
        .AddSingleton<ICommandHandler, WitnessEntry>()
        .AddSingleton<ICommandHandler, ShowStandings>()
        .AddSingleton<ICommandHandler, ShowAngler>()
        .AddSingleton<ICommandHandler, ExplainStanding>()
        .AddSingleton<ICommandHandler, RuleEntries>()
        .AddSingleton<ICommandHandler, AmendEntry>()
        .AddSingleton<ICommandHandler, PenaliseEntry>()
        .AddSingleton<ICommandHandler, ProtestEntry>()
        .AddSingleton<ICommandHandler, CloseDerby>()
        .AddSingleton<ICommandHandler, ReopenDerby>()
        .AddSingleton<ICommandHandler, ShowResults>();
}
