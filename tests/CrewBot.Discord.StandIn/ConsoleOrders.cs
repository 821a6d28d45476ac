using System.Text.Json.Nodes;

namespace CrewBot.Discord.StandIn;

/// <summary>
/// What may be ordered by lines of text: <c>command FAMILY VERB NAME=VALUE</c>, <c>autocomplete FAMILY VERB NAME=VALUE</c>,
/// <c>button ID</c>, <c>select ID VALUE</c>, <c>modal ID FIELD=TEXT</c>, <c>menu TEXT</c>, <c>cut</c>, <c>reconnect</c> and
/// <c>invalid</c>.
/// </summary>
internal sealed class ConsoleOrders(StandInServer server)
{
    private const int Text = 3;

    public async Task FollowAsync(string line)
    {
        var socket = server.LatestSocket ?? throw new InvalidOperationException("Nobody is connected.");
        var make = server.Interactions;
        switch (line.Split(' '))
        {
            case ["cut"]:
                socket.Cut();
                break;
            case ["reconnect"]:
                await socket.SendAsync(7, null);
                break;
            case ["invalid"]:
                await socket.SendAsync(9, JsonValue.Create(false));
                break;
            case ["command", var family, var verb, .. var options]:
                await SendAsync(socket, make.Command(
                    family, InteractionMaker.Subcommand(verb, [.. options.Select(option => Option(option, focused: false))])));
                break;
            case ["autocomplete", var family, var verb, var option]:
                await SendAsync(socket, make.Autocomplete(
                    family, InteractionMaker.Subcommand(verb, Option(option, focused: true))));
                break;
            case ["button", var id]:
                await SendAsync(socket, make.Button(id));
                break;
            case ["select", var id, var value]:
                await SendAsync(socket, make.Select(id, value));
                break;
            case ["modal", var id, var field]:
                await SendAsync(socket, make.Modal(id, (field.Split('=')[0], field.Split('=')[1])));
                break;
            case ["menu", .. var words]:
                await SendAsync(socket, make.MessageCommand("Plan a rig", string.Join(' ', words)));
                break;
            default:
                throw new InvalidOperationException($"Unknown order: {line}");
        }
    }

    /// <summary>Prints each request: method, path and JSON body.</summary>
    public async Task ReportRequestsAsync()
    {
        while (true)
        {
            var request = await server.NextRequestAsync("", CancellationToken.None);
            Console.WriteLine($"request {request.Method} {request.Path} {request.Json?.ToJsonString() ?? "null"}");
        }
    }

    private static Task SendAsync(GatewaySocket socket, JsonObject interaction) =>
        StandInServer.DispatchAsync(socket, "INTERACTION_CREATE", interaction);

    private static JsonObject Option(string text, bool focused) =>
        InteractionMaker.Option(text.Split('=')[0], Text, text.Split('=')[1], focused);
}
