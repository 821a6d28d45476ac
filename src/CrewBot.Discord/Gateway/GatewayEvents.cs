namespace CrewBot.Discord.Gateway;

/// <summary>The events that the bot listens to; every other one is passed over.</summary>
internal static class GatewayEvents
{
    public const string Ready = "READY";
    public const string Resumed = "RESUMED";
    public const string Message = "MESSAGE_CREATE";
    public const string Interaction = "INTERACTION_CREATE";
}
