-- What was spoken over a clip goes with it for good, and so does what was removed from the inbox. A check can't be changed in place.
CREATE TABLE file_of_any_room (
  folder TEXT NOT NULL CHECK (folder IN ('clips', 'pictures', 'sounds', 'handovers')),
  name TEXT NOT NULL CHECK (length(name) > 0 AND name NOT GLOB '*[/\]*'),
  PRIMARY KEY (folder, name)
) STRICT, WITHOUT ROWID;
INSERT INTO file_of_any_room SELECT folder, name FROM file_to_remove;
DROP TABLE file_to_remove;
ALTER TABLE file_of_any_room RENAME TO file_to_remove;

CREATE INDEX arrival_removed ON arrival (removed_at) WHERE removed_at IS NOT NULL;
