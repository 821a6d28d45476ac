using CrewBot.Storage.Crews;

namespace CrewBot.Storage.People;

/// <summary>
/// Every table that names people. A test compares this list with the database: whoever adds such a table says here what
/// becomes of a person's rows when they are erased.
/// </summary>
internal static class HeldTables
{
    private const string ToThemAlone = "crew_id = @CrewId AND place = '@' || (SELECT platform_id FROM member WHERE crew_id = @CrewId AND id = @MemberId)";

    private const string IsOut = "json_extract(value, '$.outAt') IS NOT NULL AND json_extract(value, '$.backAt') IS NULL";

    public static IReadOnlyList<HeldTable> All { get; } =
    [
        // Before the platform's id goes, by which they are addressed.
        new("post", "messages to them alone", $"DELETE FROM post WHERE {ToThemAlone}")
        {
            Column = "place",
            RowsSql = $"SELECT place, body, due_at_ms, shown_at_ms FROM post WHERE {ToThemAlone}",
        },
        new(
            "member",
            "name, platform id, role and units",
            $"UPDATE member SET platform_id = NULL, name = '{MemberRepository.Former}', role = 'member', units = NULL WHERE crew_id = @CrewId AND id = @MemberId")
        {
            Column = "id",
        },
        new("member_name", "earlier names", "DELETE FROM member_name WHERE crew_id = @CrewId AND member_id = @MemberId"),
        new(
            "catch_entry",
            "fish",
            "UPDATE catch_entry SET note = NULL, photo = NULL, photo_hash = NULL WHERE crew_id = @CrewId AND member_id = @MemberId"),
        // Counts and the numbers of fish, which stay as the fish do.
        new("catch_tally", "counts of fish by species and season", HeldTable.StaysSql),
        new(
            "catch_change",
            "corrections",
            """
            UPDATE catch_change SET before = json_remove(before, '$.Note', '$.Photo', '$.PhotoHash')
            WHERE crew_id = @CrewId AND number IN (SELECT number FROM catch_entry WHERE crew_id = @CrewId AND member_id = @MemberId)
            """),
        new(
            "line_spell",
            "times with lines down",
            "DELETE FROM line_spell WHERE crew_id = @CrewId AND member_id = @MemberId"),
        new(
            "trip",
            "trips they planned",
            "UPDATE trip SET roster = json_remove(roster, '$.place', '$.note') WHERE crew_id = @CrewId AND planned_by = @MemberId")
        {
            Column = "planned_by",
        },
        // That they are on the ice stays: whoever looks for them needs it. Off trips to come they are taken as if they had never answered.
        new("trip", "answers to trips", $"""
            UPDATE trip SET roster = json_set(roster,
                '$.roster.parties', (
                    SELECT json_group_array(json(CASE json_extract(value, '$.memberId')
                        WHEN @MemberId THEN json_remove(value, '$.smokes', '$.asksSmokeFree', CASE WHEN {IsOut} THEN '$.none' ELSE '$.spot' END)
                        ELSE value END))
                    FROM json_each(roster, '$.roster.parties')),
                '$.roster.wishes', (
                    SELECT json_group_array(json(value)) FROM json_each(roster, '$.roster.wishes') WHERE json_extract(value, '$.one') <> @MemberId))
            WHERE crew_id = @CrewId
                AND EXISTS (SELECT 1 FROM json_each(roster, '$.roster.parties') WHERE json_extract(value, '$.memberId') = @MemberId)
            """)
        {
            Column = "roster",
            RowsSql = """
                SELECT trip.number, party.value AS party FROM trip, json_each(trip.roster, '$.roster.parties') party
                WHERE trip.crew_id = @CrewId AND json_extract(party.value, '$.memberId') = @MemberId
                """,
        },
        new(
            "gear",
            "things in the box",
            "DELETE FROM gear WHERE crew_id = @CrewId AND member_id = @MemberId"),
        new(
            "break_off",
            "break-offs",
            "DELETE FROM break_off WHERE crew_id = @CrewId AND member_id = @MemberId"),
        // Standings are counted from the record of a derby, so it stays; what was said in it, and which photo, does not. That there was
        // a photo does: where a photo is what counts, what stood goes on standing.
        new("derby", "derbies they set up", HeldTable.StaysSql),
        new(
            "derby_event",
            "entries in the record of a derby that they made",
            "UPDATE derby_event SET words = '' WHERE crew_id = @CrewId AND member_id = @MemberId AND words IS NOT NULL AND kind <> 'joined'"),
        new(
            "derby_event",
            "entries in the record of a derby that name them",
            HeldTable.StaysSql)
        {
            Column = "angler_id",
        },
        new(
            "derby_entry",
            "fish in a derby",
            "UPDATE derby_entry SET photo_hash = 'erased/' || number WHERE crew_id = @CrewId AND angler_id = @MemberId AND photo_hash IS NOT NULL")
        {
            Column = "angler_id",
        },
        // Whoever walks there still needs the measurement; what was said and whose words were passed on goes.
        new(
            "ice_report",
            "reports of ice",
            "UPDATE ice_report SET page = json_remove(page, '$.note', '$.photo', '$.quote.link', '$.quote.text') WHERE crew_id = @CrewId AND member_id = @MemberId"),
        new("ice_report", "bad news of ice that they closed", HeldTable.StaysSql) { Column = "closed_by" },
        new("ice_report", "reports of ice that they took back", HeldTable.StaysSql) { Column = "withdrawn_by" },
        new(
            "ice_change",
            "what reports of ice said before they corrected them",
            "UPDATE ice_change SET before = json_remove(before, '$.note', '$.photo', '$.quote') WHERE crew_id = @CrewId AND changed_by = @MemberId")
        {
            Column = "changed_by",
        },
        // Any of them may name the person; whoever presses one that is gone asks again.
        new(
            "long_button",
            "commands behind buttons",
            "DELETE FROM long_button WHERE crew_id = (SELECT crew_id FROM member WHERE crew_id = @CrewId AND id = @MemberId)")
        {
            Column = "command",
            RowsSql = """
                SELECT command, kept_at_ms FROM long_button
                WHERE crew_id = @CrewId AND instr(command, (SELECT platform_id FROM member WHERE crew_id = @CrewId AND id = @MemberId)) > 0
                """,
        },
        // The request itself is remembered a while longer: sent again, it must not bring the person back.
        new(
            "handled_request",
            "answers kept for a repeated delivery",
            "UPDATE handled_request SET answer = @Answer WHERE crew_id = @CrewId AND member_id = @MemberId"),
    ];
}
