-- What a coach said over a clip, and what was on screen meanwhile. Not an act: a voice that is deleted is gone, no undo keeps it. Without a foreign
-- key: an undone import takes the clip's row away and may bring it back, and the narration has to be there then.

CREATE TABLE narration (
  id TEXT PRIMARY KEY NOT NULL,
  clip_id TEXT NOT NULL UNIQUE,
  -- 'recording' until it is kept: what was recorded lies in a folder of its id meanwhile.
  state TEXT NOT NULL CHECK (state IN ('recording', 'kept')),
  made_at TEXT NOT NULL,
  -- Size of the upright picture that places in the track are told in.
  shown_width INTEGER NOT NULL CHECK (shown_width > 0),
  shown_height INTEGER NOT NULL CHECK (shown_height > 0),
  lasts_us INTEGER NOT NULL CHECK (lasts_us >= 0),
  -- Name among the library's sounds, made of its SHA-256; and the track as JSON.
  file TEXT,
  sha256 TEXT,
  size_bytes INTEGER,
  track TEXT CHECK (track IS NULL OR json_valid(track)),
  CHECK ((state = 'kept') = (file IS NOT NULL)),
  CHECK ((file IS NULL) = (sha256 IS NULL) AND (file IS NULL) = (size_bytes IS NULL) AND (file IS NULL) = (track IS NULL))
) STRICT;
