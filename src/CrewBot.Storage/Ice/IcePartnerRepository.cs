using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Ice;

/// <summary>Crews that a crew will share reports of ice with. It takes both to agree.</summary>
public sealed class IcePartnerRepository(CrewSession session)
{
    private const string AgreeSql = """
        INSERT INTO ice_partner (crew_id, partner, shows_spot) VALUES (@CrewId, @Partner, @ShowsSpot)
        ON CONFLICT (crew_id, partner) DO UPDATE SET shows_spot = excluded.shows_spot
        """;

    private const string EndSql = "DELETE FROM ice_partner WHERE crew_id = @CrewId AND partner = @Partner";

    private const string HasAgreedSql = """
        SELECT COUNT(*) FROM ice_partner theirs
        JOIN crew there ON there.id = theirs.crew_id
        JOIN crew here ON here.key = theirs.partner
        JOIN ice_partner mine ON mine.crew_id = here.id AND mine.partner = there.key
        WHERE here.id = @CrewId AND there.key = @Partner
        """;

    /// <summary>This crew's side of an agreement.</summary>
    /// <param name="partner">The other crew's key.</param>
    /// <param name="showsSpot">Whether they may see the exact spot.</param>
    public Task AgreeAsync(string partner, bool showsSpot) =>
        session.ExecuteAsync(AgreeSql, new { session.CrewId, Partner = partner, ShowsSpot = showsSpot });

    /// <summary>Ends an agreement for both.</summary>
    public Task EndAsync(string partner) => session.ExecuteAsync(EndSql, new { session.CrewId, Partner = partner });

    /// <summary>Whether both have agreed.</summary>
    public async Task<bool> HasAgreedAsync(string partner) =>
        await session.SingleAsync<long>(HasAgreedSql, new { session.CrewId, Partner = partner }) > 0;
}
