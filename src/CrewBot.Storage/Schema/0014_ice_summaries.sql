-- What a report comes to beside the report: a board of the day is read without opening every report of it.
-- Null for what supports no answer.
ALTER TABLE ice_report ADD COLUMN least_nm INTEGER;
ALTER TABLE ice_report ADD COLUMN most_nm INTEGER;
ALTER TABLE ice_report ADD COLUMN counts_nm INTEGER;

UPDATE ice_report SET (least_nm, most_nm, counts_nm) = (
    SELECT MIN(total), MAX(total), MIN(counts) FROM (
        SELECT clear + other AS total, CASE WHEN weak IS NULL THEN clear + other / 2 ELSE 0 END AS counts FROM (
            SELECT COALESCE(json_extract(value, '$.clear.nm'), 0) AS clear,
                COALESCE(json_extract(value, '$.white.nm'), 0) + COALESCE(json_extract(value, '$.unsorted.nm'), 0) AS other,
                json_extract(value, '$.weak') AS weak
            FROM json_each(ice_report.page, '$.holes')
        )
    )
)
WHERE spot IS NOT NULL AND measured_at_ms IS NOT NULL AND COALESCE(json_extract(page, '$.isHearsay'), 0) = 0;

CREATE INDEX ice_report_day ON ice_report (crew_id, water_id, at_ms, spot_plain, least_nm, most_nm, counts_nm)
    WHERE withdrawn_at_ms IS NULL AND least_nm IS NOT NULL;
CREATE INDEX ice_report_spot ON ice_report (crew_id, water_id, spot_plain, at_ms) WHERE withdrawn_at_ms IS NULL;
CREATE INDEX ice_report_warm ON ice_report (crew_id, water_id, at_ms)
    WHERE withdrawn_at_ms IS NULL AND json_extract(page, '$.air') >= 0;

-- Whose channel was told: a crew that shares no more is still corrected, and told nothing else.
ALTER TABLE ice_relay ADD COLUMN partner TEXT;

PRAGMA user_version = 14;
