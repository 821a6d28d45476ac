-- What somebody was called before: posts may still say it, so erasing them has to know it.

CREATE TABLE member_name (
    crew_id   INTEGER NOT NULL,
    member_id INTEGER NOT NULL,
    name      TEXT    NOT NULL,
    PRIMARY KEY (crew_id, member_id, name),
    FOREIGN KEY (crew_id, member_id) REFERENCES member (crew_id, id)
) STRICT, WITHOUT ROWID;

PRAGMA user_version = 13;
