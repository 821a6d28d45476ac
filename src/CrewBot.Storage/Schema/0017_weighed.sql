-- The board of condition reads all weighed fish of its span, from their index alone.

DROP INDEX catch_entry_weighed;
CREATE INDEX catch_entry_weighed ON catch_entry (crew_id, caught_at_ms, number, member_id, species, water_id, length_nm, weight_ng)
    WHERE weight_ng IS NOT NULL AND length_nm IS NOT NULL AND voided_at_ms IS NULL;

PRAGMA user_version = 17;
