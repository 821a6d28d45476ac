-- Derbies: the rules as they were set, the record that is only ever added to, and the fish that were entered.

CREATE TABLE derby (
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    number        INTEGER NOT NULL,
    name          TEXT    NOT NULL,
    member_id     INTEGER NOT NULL,
    place         TEXT,
    zone          TEXT    NOT NULL,
    created_at_ms INTEGER NOT NULL,
    starts_at_ms  INTEGER NOT NULL,
    ends_at_ms    INTEGER NOT NULL,
    grace_ms      INTEGER NOT NULL CHECK (grace_ms >= 0),
    protest_ms    INTEGER NOT NULL CHECK (protest_ms >= 0),
    step_nm       INTEGER NOT NULL CHECK (step_nm > 0),
    step_unit     TEXT    NOT NULL,
    rounding      TEXT    NOT NULL,
    measure       TEXT    NOT NULL CHECK (measure IN ('length', 'points', 'share', 'condition', 'count')),
    factors       TEXT,
    most          INTEGER CHECK (most > 0),
    most_of_each  INTEGER CHECK (most_of_each > 0),
    teams         TEXT    CHECK (teams IN ('pooled', 'members')),
    best_members  INTEGER CHECK (best_members > 0),
    ties          TEXT    NOT NULL,
    ranking       TEXT    NOT NULL,
    evidence      TEXT    NOT NULL,
    minimum_nm    INTEGER CHECK (minimum_nm > 0),
    minimum_unit  TEXT,
    species       TEXT    NOT NULL,
    waters        TEXT    NOT NULL,
    kept          INTEGER CHECK (kept IN (0, 1)),
    most_entries  INTEGER CHECK (most_entries > 0),
    PRIMARY KEY (crew_id, number),
    CHECK (ends_at_ms > starts_at_ms),
    CHECK ((measure = 'points') = (factors IS NOT NULL)),
    CHECK ((minimum_nm IS NULL) = (minimum_unit IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

-- Nothing here is ever changed or taken out.
CREATE TABLE derby_event (
    crew_id       INTEGER NOT NULL,
    derby         INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    kind          TEXT    NOT NULL,
    at_ms         INTEGER NOT NULL,
    member_id     INTEGER NOT NULL,
    angler_id     INTEGER,
    entry         INTEGER,
    length_nm     INTEGER CHECK (length_nm >= 0),
    length_unit   TEXT,
    stands        INTEGER CHECK (stands IN (0, 1)),
    words         TEXT,
    PRIMARY KEY (crew_id, derby, number),
    CHECK ((length_nm IS NULL) = (length_unit IS NULL)),
    FOREIGN KEY (crew_id, derby) REFERENCES derby (crew_id, number),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, angler_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX derby_event_angler ON derby_event (crew_id, derby, angler_id, number) WHERE kind IN ('joined', 'left');
CREATE INDEX derby_event_state ON derby_event (crew_id, derby, number) WHERE kind IN ('closed', 'reopened');

CREATE INDEX derby_event_entry ON derby_event (crew_id, derby, entry, number) WHERE entry IS NOT NULL;

-- An entry as the log had it when it was entered. One catch or one photo is one entry.
CREATE TABLE derby_entry (
    crew_id       INTEGER NOT NULL,
    derby         INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    catch_number  INTEGER NOT NULL,
    angler_id     INTEGER NOT NULL,
    species       TEXT    NOT NULL,
    length_nm     INTEGER NOT NULL CHECK (length_nm > 0),
    length_unit   TEXT    NOT NULL,
    weight_ng     INTEGER CHECK (weight_ng > 0),
    weight_unit   TEXT,
    water         TEXT,
    kept          INTEGER CHECK (kept IN (0, 1)),
    caught_at_ms  INTEGER NOT NULL,
    offset_min    INTEGER NOT NULL,
    photo_hash    TEXT,
    PRIMARY KEY (crew_id, derby, number),
    UNIQUE (crew_id, derby, catch_number),
    UNIQUE (crew_id, derby, photo_hash),
    CHECK ((weight_ng IS NULL) = (weight_unit IS NULL)),
    FOREIGN KEY (crew_id, derby) REFERENCES derby (crew_id, number),
    FOREIGN KEY (crew_id, catch_number) REFERENCES catch_entry (crew_id, number),
    FOREIGN KEY (crew_id, angler_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX derby_entry_angler ON derby_entry (crew_id, derby, angler_id);

-- What of the standings the crew has been shown.
CREATE TABLE derby_board (
    crew_id       INTEGER NOT NULL,
    derby         INTEGER NOT NULL,
    is_stale      INTEGER NOT NULL CHECK (is_stale IN (0, 1)),
    shown_at_ms   INTEGER NOT NULL,
    leader        TEXT,
    led_at_ms     INTEGER NOT NULL,
    PRIMARY KEY (crew_id, derby),
    FOREIGN KEY (crew_id, derby) REFERENCES derby (crew_id, number)
) STRICT, WITHOUT ROWID;

CREATE INDEX derby_board_stale ON derby_board (crew_id, derby) WHERE is_stale = 1;

PRAGMA user_version = 4;
