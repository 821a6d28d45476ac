-- What boards and bests are read from: a row an angler, species and season instead of a row a fish.

CREATE TABLE catch_tally (
    crew_id       INTEGER NOT NULL,
    species       TEXT    NOT NULL,
    season        INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    fish          INTEGER NOT NULL CHECK (fish > 0),
    total_nm      INTEGER NOT NULL,
    longest_nm    INTEGER,
    longest_at_ms INTEGER,
    longest       INTEGER,
    PRIMARY KEY (crew_id, species, season, member_id),
    CHECK ((longest_nm IS NULL) = (longest IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, longest) REFERENCES catch_entry (crew_id, number)
) STRICT, WITHOUT ROWID;

-- A season starts on 1 July by the angler's clock; of fish as long as each other the earliest counts.
INSERT INTO catch_tally (crew_id, species, season, member_id, fish, total_nm, longest_nm, longest_at_ms, longest)
SELECT crew_id, species, season, member_id, COUNT(*), COALESCE(SUM(length_nm), 0), MAX(length_nm),
    MAX(CASE WHEN place = 1 AND length_nm IS NOT NULL THEN caught_at_ms END), MAX(CASE WHEN place = 1 AND length_nm IS NOT NULL THEN number END)
FROM (
    SELECT crew_id, species, season, member_id, length_nm, caught_at_ms, number,
        ROW_NUMBER() OVER (
            PARTITION BY crew_id, species, season, member_id ORDER BY length_nm DESC NULLS LAST, caught_at_ms, number) AS place
    FROM (
        SELECT crew_id, species, member_id, length_nm, caught_at_ms, number,
            CAST(strftime('%Y', caught_at_ms / 1000 + offset_min * 60, 'unixepoch', '-6 months') AS INTEGER) AS season
        FROM catch_entry WHERE voided_at_ms IS NULL
    )
)
GROUP BY crew_id, species, season, member_id;

-- Boards and rates read a span of time from its index alone.
DROP INDEX catch_entry_size;
DROP INDEX catch_entry_time;
CREATE INDEX catch_entry_time ON catch_entry (crew_id, caught_at_ms, number, member_id, species, presentation, water_id, length_nm)
    WHERE voided_at_ms IS NULL;
CREATE INDEX catch_entry_weighed ON catch_entry (crew_id, caught_at_ms)
    WHERE weight_ng IS NOT NULL AND length_nm IS NOT NULL AND voided_at_ms IS NULL;
CREATE INDEX catch_entry_photo ON catch_entry (crew_id, photo) WHERE photo IS NOT NULL;

DROP INDEX line_spell_member;
CREATE INDEX line_spell_member ON line_spell (crew_id, member_id);
CREATE INDEX line_spell_open ON line_spell (crew_id, member_id, down_at_ms) WHERE up_at_ms IS NULL;

PRAGMA user_version = 10;
