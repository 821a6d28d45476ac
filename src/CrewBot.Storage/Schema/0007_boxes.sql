-- What anglers own, how their lines broke, and what was known of the fish while lines were down.

-- One row a thing. A line's or leader's test and a lure's weight stand in mass, an auger's hole in width.
CREATE TABLE gear (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    kind          TEXT    NOT NULL CHECK (kind IN
        ('line', 'leader', 'lure', 'hook', 'auger', 'shelter', 'heater', 'sled', 'rescuekit')),
    name          TEXT    NOT NULL,
    record        TEXT,
    material      TEXT,
    mass_ng       INTEGER CHECK (mass_ng > 0),
    mass_unit     TEXT,
    width_nm      INTEGER CHECK (width_nm > 0),
    width_unit    TEXT,
    seats         INTEGER CHECK (seats > 0),
    PRIMARY KEY (crew_id, number),
    CHECK ((mass_ng IS NULL) = (mass_unit IS NULL)),
    CHECK ((width_nm IS NULL) = (width_unit IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX gear_member ON gear (crew_id, member_id, kind);

CREATE TABLE break_off (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    place         TEXT    NOT NULL,
    look          TEXT    NOT NULL,
    knot          TEXT,
    line          TEXT,
    test_ng       INTEGER CHECK (test_ng > 0),
    test_unit     TEXT,
    pull_ng       INTEGER CHECK (pull_ng > 0),
    pull_unit     TEXT,
    broke_at_ms   INTEGER NOT NULL,
    PRIMARY KEY (crew_id, number),
    CHECK ((test_ng IS NULL) = (test_unit IS NULL)),
    CHECK ((pull_ng IS NULL) = (pull_unit IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX break_off_knot ON break_off (crew_id, knot, line);

ALTER TABLE line_spell ADD COLUMN mood TEXT;
ALTER TABLE line_spell ADD COLUMN depth_nm INTEGER CHECK (depth_nm > 0);
ALTER TABLE line_spell ADD COLUMN depth_unit TEXT;

CREATE INDEX line_spell_time ON line_spell (crew_id, down_at_ms);

PRAGMA user_version = 7;
