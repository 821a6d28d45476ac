-- Which crews a person belongs to, for what they write in a direct message, where no crew is named.

CREATE INDEX member_by_person ON member (platform_id) WHERE platform_id IS NOT NULL;

PRAGMA user_version = 15;
