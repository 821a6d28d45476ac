-- What every fish that is logged asks and writes. An angler's tallies of a species lie together, whatever the season, and a crew's
-- longest of a species is one step into an index. First answers lie one after the other: in the key's own tree each took a page
-- of its own besides.

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

ALTER TABLE handled_request RENAME TO handled_request_by_key;

CREATE TABLE handled_request (
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    request_id    TEXT    NOT NULL,
    member_id     INTEGER NOT NULL,
    answer        TEXT    NOT NULL,
    handled_at_ms INTEGER NOT NULL,
    UNIQUE (crew_id, request_id),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT;

INSERT INTO handled_request (crew_id, request_id, member_id, answer, handled_at_ms)
SELECT crew_id, request_id, member_id, answer, handled_at_ms FROM handled_request_by_key ORDER BY handled_at_ms;

DROP TABLE handled_request_by_key;

CREATE INDEX handled_request_age ON handled_request (crew_id, handled_at_ms);

PRAGMA user_version = 20;
