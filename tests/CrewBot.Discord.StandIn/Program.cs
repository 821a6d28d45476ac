using System.Globalization;
using CrewBot.Discord.StandIn;

// Runs the stand-in by itself, for clients in other languages: prints its addresses and token, then a line for each
// request; reads a line for each thing to do (see ConsoleOrders) until its input ends.
var port = args is ["--port", var number] ? int.Parse(number, CultureInfo.InvariantCulture) : 0;
await using var server = await StandInServer.StartAsync(new StandInSettings { TurnsNamelessAway = false }, port);
Console.WriteLine($"api {server.ApiAddress}");
Console.WriteLine($"token {server.Settings.Token}");
var orders = new ConsoleOrders(server);
var reporting = orders.ReportRequestsAsync();
while (await Console.In.ReadLineAsync() is { } line)
{
    await orders.FollowAsync(line);
}
