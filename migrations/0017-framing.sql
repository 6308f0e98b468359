-- How a clip's picture is shown and which stretch of its footage it shows; the file stays as it is.

ALTER TABLE clip ADD COLUMN turn_deg INTEGER NOT NULL DEFAULT 0 CHECK (turn_deg IN (0, 90, 180, 270));
ALTER TABLE clip ADD COLUMN mirrored INTEGER NOT NULL DEFAULT 0 CHECK (mirrored IN (0, 1));
-- {"leftPx": …, "topPx": …, "widthPx": …, "heightPx": …} in pixels of the upright picture; NULL = all of it.
ALTER TABLE clip ADD COLUMN crop TEXT CHECK (json_valid(crop) AND json_type(crop) = 'object');
ALTER TABLE clip ADD COLUMN brightness REAL NOT NULL DEFAULT 1 CHECK (brightness BETWEEN 0.25 AND 4);
-- First and last frame, by the footage's own numbers; NULL = all of it.
ALTER TABLE clip ADD COLUMN section_from_frame INTEGER CHECK (section_from_frame >= 0);
ALTER TABLE clip ADD COLUMN section_from_ticks INTEGER
  CHECK (section_from_ticks BETWEEN -9007199254740991 AND 9007199254740991);
ALTER TABLE clip ADD COLUMN section_to_frame INTEGER CHECK (section_to_frame >= 0);
ALTER TABLE clip ADD COLUMN section_to_ticks INTEGER
  CHECK (section_to_ticks BETWEEN -9007199254740991 AND 9007199254740991);

-- What is recorded of a section alone stands beside what is recorded of all of the footage. A key can't be changed in place.
CREATE TABLE recording_of_frames (
  footage_id TEXT NOT NULL REFERENCES footage (id) ON DELETE CASCADE,
  what TEXT NOT NULL CHECK (what IN ('disc', 'point', 'joints')),
  -- SHA-256 of the clicks, and of the turn of a picture that is turned.
  clicks TEXT NOT NULL CHECK (length(clicks) = 64),
  -- The frames that were looked at; 10000000 = to the end.
  first_frame INTEGER NOT NULL CHECK (first_frame >= 0),
  last_frame INTEGER NOT NULL CHECK (last_frame >= first_frame),
  -- Name and version of the method: another one records again.
  method TEXT NOT NULL CHECK (length(method) BETWEEN 1 AND 200),
  recorded_at TEXT NOT NULL,
  -- JSON, packed with gzip: what was found; null = nothing.
  data BLOB NOT NULL,
  warnings TEXT NOT NULL DEFAULT '[]'
    CHECK (json_valid(warnings) AND json_type(warnings) = 'array'),
  PRIMARY KEY (footage_id, what, clicks, first_frame, last_frame)
) STRICT;
INSERT INTO recording_of_frames (footage_id, what, clicks, first_frame, last_frame, method, recorded_at, data, warnings)
  SELECT footage_id, what, clicks, 0, 10000000, method, recorded_at, data, warnings FROM recording;
DROP TABLE recording;
ALTER TABLE recording_of_frames RENAME TO recording;
