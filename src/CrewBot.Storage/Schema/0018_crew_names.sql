-- What a crew is called, where its platform tells: people see names, agreements go by the key.

ALTER TABLE crew ADD COLUMN name TEXT;

PRAGMA user_version = 18;
