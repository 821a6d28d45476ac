-- Whom a crew calls when a party is overdue, and posts that are said again until they are taken back.

ALTER TABLE crew ADD COLUMN emergency TEXT;
ALTER TABLE crew ADD COLUMN contact_role TEXT;

ALTER TABLE post ADD COLUMN again_ms INTEGER CHECK (again_ms > 0);

PRAGMA user_version = 8;
