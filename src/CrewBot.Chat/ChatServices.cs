using CrewBot.Chat.Boxes;
using CrewBot.Chat.Catches;
using CrewBot.Chat.CatchFiles;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Crews;
using CrewBot.Chat.Derbies;
using CrewBot.Chat.Ice;
using CrewBot.Chat.Learning;
using CrewBot.Chat.Lines;
using CrewBot.Chat.Photos;
using CrewBot.Chat.Privacy;
using CrewBot.Chat.Rigs;
using CrewBot.Chat.Trips;
using CrewBot.Chat.Weather;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CrewBot.Chat;

/// <summary>Registers the commands.</summary>
public static class ChatServices
{
    /// <summary>Adds every command and what dispatches them.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="knowledge">What the trade knows, a crew's overlay included.</param>
    /// <param name="book">What the crews have stored; null for a process without a database.</param>
    public static IServiceCollection AddChat(this IServiceCollection services, TradeKnowledge knowledge, CrewBook? book = null)
    {
        services.AddSingleton(knowledge);
        services.AddSingleton(book ?? CrewBook.None);
        services.AddSingleton<RigPlanner>();
        services.AddSingleton<PurchaseAdviser>();
        services.AddSingleton<RigOptions>();
        services.AddSingleton<RigShorthand>();
        services.AddSingleton<RigPairing>();
        services.AddSingleton<RigSpread>();
        services.AddSingleton<ICommandHandler, PlanRig>();
        services.AddSingleton<ICommandHandler, PairRigs>();
        services.AddSingleton<ICommandHandler, SpreadCrew>();
        services.AddSingleton<ICommandHandler, CheckRig>();
        services.AddSingleton<ICommandHandler, ExplainBreak>();
        services.AddSingleton<ICommandHandler, VoidBreak>();
        services.AddSingleton<ICommandHandler, DropLure>();
        services.AddSingleton<ICommandHandler, CompareLines>();
        services.AddSingleton<ICommandHandler, FillSpool>();
        services.AddSingleton<CrewOptions>();
        services.AddSingleton<ICommandHandler, SetUpCrew>();
        services.AddSingleton<ICommandHandler, SetUpMe>();
        services.TryAddSingleton<IPhotoCopies, NoPhotoCopies>();
        services.AddSingleton<PhotoDesk>();
        services.AddSingleton<CatchOptions>();
        services.AddSingleton<CatchShorthand>();
        services.AddSingleton<ICommandHandler, LogCatch>();
        services.AddSingleton<ICommandHandler, EditCatch>();
        services.AddSingleton<ICommandHandler, VoidCatch>();
        services.AddSingleton<ICommandHandler, ListCatches>();
        services.AddSingleton<ICommandHandler, BestCatches>();
        services.AddSingleton<ICommandHandler, LeadCatches>();
        services.AddSingleton<ICommandHandler, LinesDown>();
        services.AddSingleton<ICommandHandler, LinesUp>();
        services.AddDerbies();
        services.AddTrips();
        services.AddIce();
        services.AddWeather();
        services.AddBoxes();
        services.AddLearning();
        services.AddCatchFiles();
        services.AddSingleton<ICommandHandler, HandlePrivacy>();
        services.AddSingleton(provider => new CommandCatalog(provider.GetServices<ICommandHandler>(), bare: "rig plan"));
        services.AddSingleton<Dispatcher>();
        return services;
    }
}
