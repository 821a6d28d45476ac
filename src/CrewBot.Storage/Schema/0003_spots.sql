-- Where in a water a fish was caught. Few entries say so, and who reads the log without it reads no spot.

CREATE TABLE catch_spot (
    crew_id       INTEGER NOT NULL,
    number        INTEGER NOT NULL,
    spot_id       INTEGER NOT NULL,
    PRIMARY KEY (crew_id, number),
    FOREIGN KEY (crew_id, number) REFERENCES catch_entry (crew_id, number),
    FOREIGN KEY (crew_id, spot_id) REFERENCES spot (crew_id, id)
) STRICT, WITHOUT ROWID;

PRAGMA user_version = 3;
