-- Trips. What people answer, bring and are told changes with every press of a button and is only ever read whole, so it is kept whole;
-- people stand in it by their number alone: names stay in the one table of names.

CREATE TABLE trip (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    planned_by    INTEGER NOT NULL,
    water_id      INTEGER NOT NULL,
    meet_at_ms    INTEGER NOT NULL,
    return_at_ms  INTEGER NOT NULL CHECK (return_at_ms > meet_at_ms),
    is_cancelled  INTEGER NOT NULL CHECK (is_cancelled IN (0, 1)),
    roster        TEXT    NOT NULL,
    PRIMARY KEY (crew_id, number),
    FOREIGN KEY (crew_id, planned_by) REFERENCES member (crew_id, id),
    FOREIGN KEY (crew_id, water_id) REFERENCES water (crew_id, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX trip_return ON trip (crew_id, return_at_ms);

PRAGMA user_version = 6;
