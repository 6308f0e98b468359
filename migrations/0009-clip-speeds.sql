-- How fast the fastest rep of a clip goes up: derived data, measured anew where what it was made from is another by now.
-- No act remembers these rows.

CREATE TABLE clip_speed (
  clip_id TEXT PRIMARY KEY NOT NULL REFERENCES clip (id) ON DELETE CASCADE,
  -- SHA-256 of the recording's stamp, the set-up and the reps' edges.
  made_from TEXT NOT NULL CHECK (length(made_from) = 64),
  -- Metres a second; NULL = nothing is measured in metres.
  fastest_mps REAL CHECK (fastest_mps > 0)
) STRICT, WITHOUT ROWID;
