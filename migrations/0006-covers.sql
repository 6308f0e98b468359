-- What is covered in a clip, in everything of it that leaves the desk: boxes that somebody placed, in pixels of the
-- upright picture, and the lifter's head, which is where the joints have it.

CREATE TABLE cover (
  id TEXT PRIMARY KEY NOT NULL,
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  ordinal INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('box', 'head')),
  first_frame INTEGER NOT NULL CHECK (first_frame >= 0),
  last_frame INTEGER NOT NULL CHECK (last_frame >= first_frame),
  look TEXT NOT NULL CHECK (look IN ('filled', 'mosaic')),
  -- [{"frame": …, "box": {"leftPx": …, "topPx": …, "widthPx": …, "heightPx": …}}, …], rising; none for a head.
  places TEXT NOT NULL CHECK (json_valid(places) AND json_type(places) = 'array'),
  CHECK ((kind = 'box') = (json_array_length(places) > 0))
) STRICT;
CREATE INDEX cover_clip ON cover (clip_id);
CREATE UNIQUE INDEX cover_head ON cover (clip_id) WHERE kind = 'head';
