using System.Globalization;
using CrewBot.Discord.StandIn;

// Runs the stand-in by itself: prints its addresses and token, then serves until its input ends.
var port = args is ["--port", var number] ? int.Parse(number, CultureInfo.InvariantCulture) : 0;
await using var server = await StandInServer.StartAsync(port: port);
Console.WriteLine($"api {server.ApiAddress}");
Console.WriteLine($"token {server.Settings.Token}");
while (await Console.In.ReadLineAsync() is not null)
{
}
