using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Ice;

/// <summary>
/// Who is told of a report: channels of the crew itself, and of crews with which each has agreed. What reaches a channel is a
/// post and never a report, so nothing that was relayed can be relayed on.
/// </summary>
public sealed class IceFollowerRepository(CrewSession session)
{
    private const string FollowSql = """
        INSERT INTO ice_follower (crew_id, water_id, channel) VALUES (@CrewId, @WaterId, @Channel) ON CONFLICT DO NOTHING
        """;

    private const string LeaveSql = "DELETE FROM ice_follower WHERE crew_id = @CrewId AND water_id = @WaterId AND channel = @Channel";

    // Both crews must name each other; a water is the same when the two have a name for it in common.
    private const string ChannelsSql = """
        SELECT channel, MAX(shows_spot) AS shows_spot, NULLIF(MIN(partner), '') AS partner, 1 AS may_learn_more FROM (
            SELECT channel, 1 AS shows_spot, '' AS partner FROM ice_follower WHERE crew_id = @CrewId AND water_id = @WaterId
            UNION ALL
            SELECT follower.channel, mine.shows_spot, mine.partner
            FROM ice_partner mine
            JOIN crew here ON here.id = mine.crew_id
            JOIN crew there ON there.key = mine.partner
            JOIN ice_partner theirs ON theirs.crew_id = there.id AND theirs.partner = here.key
            JOIN water_name ours ON ours.crew_id = here.id AND ours.water_id = @WaterId
            JOIN water_name known ON known.crew_id = there.id AND known.plain = ours.plain
            JOIN ice_follower follower ON follower.crew_id = there.id AND follower.water_id = known.water_id
            WHERE mine.crew_id = @CrewId
        ) GROUP BY channel ORDER BY channel
        """;

    private const string ToldSql = """
        SELECT relay.channel, relay.shows_spot, relay.partner, relay.partner IS NULL OR EXISTS (
            SELECT 1 FROM ice_partner mine
            JOIN crew here ON here.id = mine.crew_id
            JOIN crew there ON there.key = mine.partner
            JOIN ice_partner theirs ON theirs.crew_id = there.id AND theirs.partner = here.key
            WHERE mine.crew_id = @CrewId AND mine.partner = relay.partner AND mine.shows_spot >= relay.shows_spot
        ) AS may_learn_more
        FROM ice_relay relay WHERE relay.crew_id = @CrewId AND relay.number = @Number ORDER BY relay.channel
        """;

    private const string NoteSql = """
        INSERT INTO ice_relay (crew_id, number, channel, shows_spot, partner) VALUES (@CrewId, @Number, @Channel, @ShowsSpot, @Partner)
        ON CONFLICT DO NOTHING
        """;

    /// <summary>A channel follows a water; a second time changes nothing.</summary>
    public Task FollowAsync(long waterId, string channel) =>
        session.ExecuteAsync(FollowSql, new { session.CrewId, WaterId = waterId, Channel = channel });

    /// <summary>A channel follows a water no more.</summary>
    /// <returns>Whether it did.</returns>
    public async Task<bool> LeaveAsync(long waterId, string channel) =>
        await session.ExecuteAsync(LeaveSql, new { session.CrewId, WaterId = waterId, Channel = channel }) > 0;

    /// <summary>The channels that are told of a report of a water now.</summary>
    public Task<IReadOnlyList<IceChannel>> ChannelsAsync(long waterId) => ReadAsync(ChannelsSql, new { session.CrewId, WaterId = waterId });

    /// <summary>The channels that were told of a report, those of crews that share no more among them: a correction reaches every copy.</summary>
    public Task<IReadOnlyList<IceChannel>> ToldAsync(long number) => ReadAsync(ToldSql, new { session.CrewId, Number = number });

    /// <summary>Notes that a channel is told of a report.</summary>
    public Task NoteAsync(long number, IceChannel channel) => session.ExecuteAsync(
        NoteSql, new { session.CrewId, Number = number, channel.Channel, channel.ShowsSpot, channel.Partner });

    private async Task<IReadOnlyList<IceChannel>> ReadAsync<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
        where TParameters : class =>
        [.. (await session.QueryAsync(sql, parameters, ChannelRow.Rows)).Select(row => row.ToChannel())];

    internal sealed record ChannelRow
    {
        public static Func<DbDataReader, ChannelRow> Rows(DbDataReader reader) => reader.GetRowParser<ChannelRow>();

        public string Channel { get; init; } = "";

        public long ShowsSpot { get; init; }

        public string? Partner { get; init; }

        public long MayLearnMore { get; init; }

        public IceChannel ToChannel() => new(Channel, ShowsSpot != 0) { Partner = Partner, MayLearnMore = MayLearnMore != 0 };
    }
}
