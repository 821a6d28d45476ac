-- A break-off that was reported by mistake no longer counts; its number is given to no other.

ALTER TABLE break_off ADD COLUMN voided_at_ms INTEGER;

PRAGMA user_version = 21;
