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
        Told(member?.Nick) ?? Told(person.GlobalName) ?? Told(person.Username) ?? Told(person.Id?.ToString()) ?? "";

    private static string? Told(string? name) => string.IsNullOrWhiteSpace(name) ? null : name;

    private static Role RoleOf(string? permissions)
    {
        // As many bits as there are permissions: 64 are enough today, and may not always be.
        var bits = ulong.TryParse(permissions, NumberStyles.None, CultureInfo.InvariantCulture, out var few) ? few
            : BigInteger.TryParse(permissions, NumberStyles.None, CultureInfo.InvariantCulture, out var many) ? (ulong)(many & ulong.MaxValue)
            : 0;
        bool May(int bit) => (bits >> bit & 1) != 0;
        return May(Administrator) || May(ManageGuild) ? Role.Owner
            : May(ManageEvents) ? Role.Steward
            : Role.Member;
    }

    private static CrewUnits UnitsOf(string? locale) =>
        locale is null or UsualLocale ? CrewUnits.Customary : CrewUnits.Metric;
}
