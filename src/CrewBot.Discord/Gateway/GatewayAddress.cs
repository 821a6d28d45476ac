namespace CrewBot.Discord.Gateway;

/// <summary>Gives any gateway address the query that every connection needs, resumed ones too.</summary>
internal static class GatewayAddress
{
    public static Uri Of(Uri place) => new UriBuilder(place) { Query = "v=10&encoding=json" }.Uri;
}
