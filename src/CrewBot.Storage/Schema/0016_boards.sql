-- Standings are a post, and who led is said in posts: nothing of them is noted beside.

DROP TABLE derby_board;

-- Which catches of a derby are void is asked with every look at its standings.
CREATE INDEX catch_entry_void ON catch_entry (crew_id, number, voided_at_ms) WHERE voided_at_ms IS NOT NULL;

CREATE INDEX derby_entry_catch ON derby_entry (crew_id, catch_number);

-- Some news is none when it comes late.
ALTER TABLE post ADD COLUMN good_for_ms INTEGER CHECK (good_for_ms > 0);

PRAGMA user_version = 16;
