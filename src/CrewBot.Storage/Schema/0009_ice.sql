-- What was measured on the ice, who is told of it, and what a crew asks of ice beyond the program's own figures.

-- Instant: measured, or filed where nobody said. What is open is bad news that no steward has closed.
CREATE TABLE ice_report (
    crew_id          INTEGER NOT NULL,
    number           INTEGER NOT NULL,
    member_id        INTEGER NOT NULL,
    water_id         INTEGER NOT NULL,
    spot             TEXT,
    spot_plain       TEXT    NOT NULL,
    at_ms            INTEGER NOT NULL,
    measured_at_ms   INTEGER,
    filed_at_ms      INTEGER NOT NULL,
    is_open          INTEGER NOT NULL CHECK (is_open IN (0, 1)),
    page             TEXT    NOT NULL,
    closed_by        INTEGER,
    closed_with      INTEGER,
    closed_reason    TEXT,
    closed_at_ms     INTEGER,
    withdrawn_by     INTEGER,
    withdrawn_reason TEXT,
    withdrawn_at_ms  INTEGER,
    PRIMARY KEY (crew_id, number),
    CHECK ((closed_at_ms IS NULL) = (closed_reason IS NULL)),
    CHECK ((closed_at_ms IS NULL) = (closed_with IS NULL)),
    CHECK ((withdrawn_at_ms IS NULL) = (withdrawn_reason IS NULL)),
    CHECK (is_open = 0 OR (closed_at_ms IS NULL AND withdrawn_at_ms IS NULL)),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, closed_by) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, withdrawn_by) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX ice_report_newest ON ice_report (crew_id, water_id, at_ms) WHERE withdrawn_at_ms IS NULL;
CREATE INDEX ice_report_open ON ice_report (crew_id, water_id, spot_plain, at_ms) WHERE is_open = 1;

CREATE TABLE ice_change (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    at_ms         INTEGER NOT NULL,
    changed_by    INTEGER NOT NULL,
    reason        TEXT    NOT NULL,
    before        TEXT    NOT NULL,
    PRIMARY KEY (crew_id, number, at_ms),
    FOREIGN KEY (crew_id, number) REFERENCES ice_report (crew_id, number),
    FOREIGN KEY (crew_id, changed_by) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE ice_follower (
    crew_id       INTEGER NOT NULL,
    water_id      INTEGER NOT NULL,
    channel       TEXT    NOT NULL,
    PRIMARY KEY (crew_id, water_id, channel),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

-- One side of an agreement: reports go over when each crew has a row that names the other.
CREATE TABLE ice_partner (
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    partner       TEXT    NOT NULL,
    shows_spot    INTEGER NOT NULL CHECK (shows_spot IN (0, 1)),
    PRIMARY KEY (crew_id, partner)
) STRICT, WITHOUT ROWID;

-- Where a report was told, so that a correction reaches every copy.
CREATE TABLE ice_relay (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    channel       TEXT    NOT NULL,
    shows_spot    INTEGER NOT NULL CHECK (shows_spot IN (0, 1)),
    PRIMARY KEY (crew_id, number, channel),
    FOREIGN KEY (crew_id, number) REFERENCES ice_report (crew_id, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE ice_authority (
    crew_id       INTEGER NOT NULL PRIMARY KEY REFERENCES crew (id),
    authority     TEXT    NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE ice_figure (
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    load          TEXT    NOT NULL,
    thickness_nm  INTEGER NOT NULL CHECK (thickness_nm > 0),
    unit          TEXT    NOT NULL,
    reference     TEXT    NOT NULL,
    PRIMARY KEY (crew_id, load)
) STRICT, WITHOUT ROWID;

PRAGMA user_version = 9;
