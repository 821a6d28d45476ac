-- Commands behind buttons and forms that are too long for what a platform lets a button carry.

CREATE TABLE long_button (
    crew_id    INTEGER NOT NULL REFERENCES crew (id),
    key        TEXT    NOT NULL,
    command    TEXT    NOT NULL,
    kept_at_ms INTEGER NOT NULL,
    PRIMARY KEY (crew_id, key)
) STRICT, WITHOUT ROWID;

CREATE INDEX long_button_age ON long_button (crew_id, kept_at_ms);

PRAGMA user_version = 19;
