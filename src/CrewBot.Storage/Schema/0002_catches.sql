-- Fish and line-hours. Lengths are whole nanometres, masses whole nanograms, each with the unit the angler used.

-- Entries are numbered within the crew and lie together on the disk.
CREATE TABLE catch_entry (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    species       TEXT    NOT NULL,
    length_nm     INTEGER CHECK (length_nm > 0),
    length_unit   TEXT,
    weight_ng     INTEGER CHECK (weight_ng > 0),
    weight_unit   TEXT,
    girth_nm      INTEGER CHECK (girth_nm > 0),
    girth_unit    TEXT,
    depth_nm      INTEGER CHECK (depth_nm > 0),
    depth_unit    TEXT,
    water_id      INTEGER,
    presentation  TEXT,
    lure          TEXT,
    mood          TEXT,
    line          INTEGER,
    kept          INTEGER CHECK (kept IN (0, 1)),
    caught_at_ms  INTEGER NOT NULL,
    offset_min    INTEGER NOT NULL,
    note          TEXT,
    photo         TEXT,
    logged_at_ms  INTEGER NOT NULL,
    voided_at_ms  INTEGER,
    PRIMARY KEY (crew_id, number),
    CHECK ((length_nm IS NULL) = (length_unit IS NULL)),
    CHECK ((weight_ng IS NULL) = (weight_unit IS NULL)),
    CHECK ((girth_nm IS NULL) = (girth_unit IS NULL)),
    CHECK ((depth_nm IS NULL) = (depth_unit IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX catch_entry_time ON catch_entry (crew_id, caught_at_ms);
CREATE INDEX catch_entry_size ON catch_entry (crew_id, species, length_nm);
CREATE INDEX catch_entry_member ON catch_entry (crew_id, member_id, caught_at_ms);

-- What an entry said before it was edited or voided.
CREATE TABLE catch_change (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    change        INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    changed_at_ms INTEGER NOT NULL,
    before        TEXT    NOT NULL,
    PRIMARY KEY (crew_id, number, change),
    FOREIGN KEY (crew_id, number) REFERENCES catch_entry (crew_id, number),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE line_spell (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    water_id      INTEGER,
    presentation  TEXT,
    lines         INTEGER NOT NULL CHECK (lines > 0),
    down_at_ms    INTEGER NOT NULL,
    offset_min    INTEGER NOT NULL,
    up_at_ms      INTEGER CHECK (up_at_ms >= down_at_ms),
    PRIMARY KEY (crew_id, number),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX line_spell_member ON line_spell (crew_id, member_id, up_at_ms);

PRAGMA user_version = 2;
