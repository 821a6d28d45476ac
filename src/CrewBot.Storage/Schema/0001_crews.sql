-- Crews, their people and waters, the requests that were answered, and what is still to be posted.

CREATE TABLE crew (
    id            INTEGER PRIMARY KEY,
    key           TEXT    NOT NULL UNIQUE,
    units         TEXT    CHECK (units IN ('customary', 'metric')),
    zone          TEXT,
    revision      INTEGER NOT NULL DEFAULT 0
) STRICT;

-- The one table that holds names: erasing a person is replacing one row.
CREATE TABLE member (
    id            INTEGER PRIMARY KEY,
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    platform_id   TEXT,
    name          TEXT    NOT NULL,
    role          TEXT    NOT NULL DEFAULT 'member' CHECK (role IN ('member', 'steward', 'owner')),
    units         TEXT    CHECK (units IN ('customary', 'metric')),
    UNIQUE (crew_id, id),
    UNIQUE (crew_id, platform_id)
) STRICT;

-- Coordinates are whole hundredths of a degree: about a kilometre, never a spot.
CREATE TABLE water (
    id            INTEGER PRIMARY KEY,
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    name          TEXT    NOT NULL,
    latitude_cdeg INTEGER CHECK (latitude_cdeg BETWEEN -9000 AND 9000),
    longitude_cdeg INTEGER CHECK (longitude_cdeg BETWEEN -18000 AND 18000),
    UNIQUE (crew_id, id)
) STRICT;

CREATE TABLE water_name (
    crew_id       INTEGER NOT NULL,
    plain         TEXT    NOT NULL,
    water_id      INTEGER NOT NULL,
    name          TEXT    NOT NULL,
    PRIMARY KEY (crew_id, plain),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE spot (
    id            INTEGER PRIMARY KEY,
    crew_id       INTEGER NOT NULL,
    water_id      INTEGER NOT NULL,
    plain         TEXT    NOT NULL,
    name          TEXT    NOT NULL,
    UNIQUE (crew_id, id),
    UNIQUE (crew_id, water_id, plain),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT;

CREATE TABLE water_rule (
    crew_id       INTEGER NOT NULL,
    water_id      INTEGER NOT NULL,
    rule          TEXT    NOT NULL,
    value         TEXT    NOT NULL,
    reference     TEXT    NOT NULL,
    PRIMARY KEY (crew_id, water_id, rule),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE crew_channel (
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    purpose       TEXT    NOT NULL,
    channel       TEXT    NOT NULL,
    PRIMARY KEY (crew_id, purpose)
) STRICT, WITHOUT ROWID;

CREATE TABLE handled_request (
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    request_id    TEXT    NOT NULL,
    member_id     INTEGER NOT NULL,
    answer        TEXT    NOT NULL,
    handled_at_ms INTEGER NOT NULL,
    PRIMARY KEY (crew_id, request_id),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX handled_request_age ON handled_request (crew_id, handled_at_ms);

CREATE TABLE outbox_message (
    id            INTEGER PRIMARY KEY,
    crew_id       INTEGER NOT NULL REFERENCES crew (id),
    nonce         TEXT    NOT NULL UNIQUE,
    purpose       TEXT    NOT NULL,
    body          TEXT    NOT NULL,
    created_at_ms INTEGER NOT NULL,
    due_at_ms     INTEGER,
    attempts      INTEGER NOT NULL DEFAULT 0,
    fault         TEXT
) STRICT;

-- A message without a due time is a dead letter.
CREATE INDEX outbox_message_due ON outbox_message (crew_id, due_at_ms);

PRAGMA application_id = 1131570551;
PRAGMA user_version = 1;
