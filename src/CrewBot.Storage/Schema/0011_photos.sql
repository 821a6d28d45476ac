-- The same photo is known again under another link by what is in it.

ALTER TABLE catch_entry ADD COLUMN photo_hash TEXT;

CREATE INDEX catch_entry_photo_hash ON catch_entry (crew_id, photo_hash) WHERE photo_hash IS NOT NULL;

PRAGMA user_version = 11;
