-- How a clip's file and its playable copy lay on the disk when their content was last known to be right, so that a file that was changed is
-- noticed without reading all of it each time. Null: not looked at yet.
ALTER TABLE footage ADD COLUMN file_modified_ms INTEGER;
ALTER TABLE footage ADD COLUMN proxy_size_bytes INTEGER;
ALTER TABLE footage ADD COLUMN proxy_modified_ms INTEGER;
ALTER TABLE footage ADD COLUMN proxy_sha256 TEXT;
