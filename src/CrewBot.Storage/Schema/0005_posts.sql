-- What the bot says unasked: what each post shall say, and how much of that its readers see. Nothing ever wrote the old table.

DROP TABLE outbox_message;

CREATE TABLE post (
    id             INTEGER PRIMARY KEY,
    crew_id        INTEGER NOT NULL REFERENCES crew (id),
    key            TEXT    NOT NULL,
    place          TEXT    NOT NULL,
    body           TEXT    NOT NULL,
    revision       INTEGER NOT NULL DEFAULT 1,
    notifies       INTEGER NOT NULL CHECK (notifies IN (0, 1)),
    late_line      TEXT,
    gap_ms         INTEGER NOT NULL CHECK (gap_ms >= 0),
    withdrawn      INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
    due_at_ms      INTEGER NOT NULL,
    next_at_ms     INTEGER,
    nonce          TEXT    NOT NULL UNIQUE,
    tried_revision INTEGER,
    shown_revision INTEGER,
    shown_at_ms    INTEGER,
    message_place  TEXT,
    message_id     TEXT,
    attempts       INTEGER NOT NULL DEFAULT 0,
    fault          TEXT,
    UNIQUE (crew_id, key),
    CHECK ((message_id IS NULL) = (message_place IS NULL)),
    CHECK ((message_id IS NULL) = (shown_revision IS NULL)),
    CHECK ((message_id IS NULL) = (shown_at_ms IS NULL))
) STRICT;

-- What is still to be brought to its readers, place by place; the rest is not in it, however much was said.
CREATE INDEX post_next ON post (crew_id, place, next_at_ms) WHERE next_at_ms IS NOT NULL;

PRAGMA user_version = 5;
