-- The inbox: files that came in, in a batch of their own or from the watched folder. A row stays once its clip is in a
-- session, so that the watched folder knows the file, and so that a clip whose coming is undone lies in the inbox again.
-- Not an act: it says what came in; the act is the one that brings the clip into a session.
CREATE TABLE arrival (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  -- The job that reads it: one for all that came together.
  batch_id TEXT NOT NULL,
  path TEXT NOT NULL,
  -- The folders it lay in, the innermost last, as JSON.
  folders TEXT NOT NULL CHECK (json_valid(folders)),
  size_bytes INTEGER NOT NULL CHECK (size_bytes >= 0),
  modified_ms INTEGER NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('waiting', 'read', 'failed')),
  -- Why it could not be read, as a message; '' where it was.
  message TEXT NOT NULL,
  footage_id TEXT REFERENCES footage (id) ON DELETE CASCADE,
  recorded_at TEXT NOT NULL,
  recorded_day TEXT NOT NULL CHECK (recorded_day GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  -- Whether the film itself says when it was made, or only its file.
  recorded_by TEXT NOT NULL CHECK (recorded_by IN ('film', 'file')),
  -- Where the joints say the camera stood, if they were looked for before.
  seen_from TEXT CHECK (seen_from IN ('side', 'front', 'rear', 'oblique')),
  -- What a person said of it, as JSON.
  choice TEXT NOT NULL CHECK (json_valid(choice)),
  -- The clip it became, and the session of that; 1 = that clip is there.
  session_id TEXT REFERENCES session (id) ON DELETE SET NULL,
  clip_id TEXT,
  placed INTEGER NOT NULL DEFAULT 0 CHECK (placed IN (0, 1)),
  removed_at TEXT,
  arrived_at TEXT NOT NULL
) STRICT;
CREATE INDEX arrival_in_inbox ON arrival (placed, number) WHERE removed_at IS NULL;
CREATE INDEX arrival_batch ON arrival (batch_id, state);
CREATE INDEX arrival_session ON arrival (session_id);
CREATE INDEX arrival_footage ON arrival (footage_id);
CREATE INDEX arrival_path ON arrival (path);
