using System.Globalization;
using System.Numerics;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;
using Role = CrewBot.Chat.Commands.Role;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Says who acted and what they may do. The platform's own permissions decide, as they stand at this very interaction:
/// whoever manages the server owns the crew, whoever manages its events is a steward.
/// </summary>
internal static class CallerReader
{
    private const int Administrator = 3;
    private const int ManageGuild = 5;
    private const int ManageEvents = 33;
    private const string UsualLocale = "en-US";

    /// <param name="interaction">What they did.</param>
    /// <param name="units">What units everybody speaks in who set none; null to go by the language.</param>
    public static Caller Read(Interaction interaction, CrewUnits? units = null) => new(
        interaction.GuildId?.ToString(),
        interaction.Actor?.Id?.ToString() ?? "",
        RoleOf(interaction.Member?.Permissions),
        units ?? UnitsOf(interaction.GuildLocale ?? interaction.Locale),
        interaction.Locale ?? UsualLocale)
    {
        Name = interaction.Actor is { } person ? NameOf(interaction.Member, person) : "",
    };

    /// <summary>Who wrote to the bot alone, where no language is told.</summary>
    public static Caller Read(User person, CrewUnits? units = null) => new(
        Crew: null, person.Id?.ToString() ?? "", Role.Member, units ?? UnitsOf(UsualLocale), UsualLocale)
    {
        Name = NameOf(null, person),
    };

    /// <summary>What a person goes by: in this server, else everywhere, else the name they log in with.</summary>
    public static string NameOf(Member? member, User person) =>
        Stated(member?.Nick) ?? Stated(person.GlobalName) ?? Stated(person.Username) ?? person.Id?.ToString() ?? "";

    private static string? Stated(string? name) => string.IsNullOrWhiteSpace(name) ? null : name;

    private static Role RoleOf(string? permissions)
    {
        var bits = LowBitsOf(permissions);
        bool May(int bit) => (bits & (1UL << bit)) != 0;
        return May(Administrator) || May(ManageGuild) ? Role.Owner
            : May(ManageEvents) ? Role.Steward
            : Role.Member;
    }

    // The set grows, but what is asked about here stays in its first 64 bits.
    private static ulong LowBitsOf(string? permissions) =>
        ulong.TryParse(permissions, NumberStyles.None, CultureInfo.InvariantCulture, out var bits) ? bits
        : BigInteger.TryParse(permissions, NumberStyles.None, CultureInfo.InvariantCulture, out var wide) ? (ulong)(wide & ulong.MaxValue)
        : 0;

    private static CrewUnits UnitsOf(string? locale) =>
        locale is null or UsualLocale ? CrewUnits.Customary : CrewUnits.Metric;
}
