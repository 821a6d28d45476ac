-- Closed bad news is listed for the season without a walk through every report of the water.

CREATE INDEX ice_report_closed ON ice_report (crew_id, water_id, at_ms) WHERE closed_at_ms IS NOT NULL AND withdrawn_at_ms IS NULL;

PRAGMA user_version = 12;
