-- What is drawn over the picture of a clip, in pixels of the upright picture, from one moment to another.

CREATE TABLE drawing (
  id TEXT PRIMARY KEY NOT NULL,
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  ordinal INTEGER NOT NULL,
  shape TEXT NOT NULL CHECK (shape IN ('line', 'angle', 'plumb', 'circle', 'stroke', 'text')),
  -- [{"x": …, "y": …}, …]
  points TEXT NOT NULL CHECK (json_valid(points) AND json_type(points) = 'array'),
  text TEXT CHECK ((text IS NULL) = (shape <> 'text') AND length(text) BETWEEN 1 AND 200),
  from_frame INTEGER CHECK (from_frame >= 0),
  from_ticks INTEGER CHECK (from_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  from_seconds REAL CHECK (from_seconds >= 0),
  to_frame INTEGER CHECK (to_frame >= 0),
  to_ticks INTEGER CHECK (to_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  to_seconds REAL CHECK (to_seconds >= 0),
  CHECK ((from_frame IS NULL) = (from_ticks IS NULL) AND (from_frame IS NULL) <> (from_seconds IS NULL)),
  CHECK ((to_frame IS NULL) = (to_ticks IS NULL) AND (to_frame IS NULL) <> (to_seconds IS NULL))
) STRICT;
CREATE INDEX drawing_clip ON drawing (clip_id);
