-- An angler's tallies of a species lie together, whatever the season, and a crew's longest of a species is one step into an index:
-- both are asked with every fish that is logged.

ALTER TABLE catch_tally RENAME TO catch_tally_by_season;

CREATE TABLE catch_tally (
    crew_id       INTEGER NOT NULL,
    species       TEXT    NOT NULL,
    member_id     INTEGER NOT NULL,
    season        INTEGER NOT NULL,
    fish          INTEGER NOT NULL CHECK (fish > 0),
    total_nm      INTEGER NOT NULL,
    longest_nm    INTEGER,
    longest_at_ms INTEGER,
    longest       INTEGER,
    PRIMARY KEY (crew_id, species, member_id, season),
    CHECK ((longest_nm IS NULL) = (longest IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, longest) REFERENCES catch_entry (crew_id, number)
) STRICT, WITHOUT ROWID;

INSERT INTO catch_tally (crew_id, species, member_id, season, fish, total_nm, longest_nm, longest_at_ms, longest)
SELECT crew_id, species, member_id, season, fish, total_nm, longest_nm, longest_at_ms, longest FROM catch_tally_by_season;

DROP TABLE catch_tally_by_season;

CREATE INDEX catch_tally_longest ON catch_tally (crew_id, species, longest_nm DESC, longest_at_ms, longest) WHERE longest_nm IS NOT NULL;

PRAGMA user_version = 18;
