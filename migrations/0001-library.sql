-- The library's first shape.
-- Rows of entry, clip, rep, flag, flag_rep, tick and session change only through acts, which remember each row before
-- and after; so their foreign keys restrict instead of cascading: a row that went by a cascade could not come back.
-- A moment is a frame and its ticks (exact), or media seconds where no frame table is known; never both.

CREATE TABLE migration (
  version INTEGER PRIMARY KEY CHECK (version >= 1),
  name TEXT NOT NULL,
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
  applied_at TEXT NOT NULL
) STRICT;

CREATE TABLE library (
  only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
  id TEXT NOT NULL,
  created_at TEXT NOT NULL,
  voice TEXT NOT NULL CHECK (voice IN ('coach', 'self')),
  coach TEXT NOT NULL
) STRICT;

CREATE TABLE trainee (
  id TEXT PRIMARY KEY NOT NULL,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  goal TEXT NOT NULL CHECK (goal IN ('growth', 'strength', 'skill')),
  experience TEXT NOT NULL CHECK (experience IN ('new', 'experienced')),
  units TEXT NOT NULL CHECK (units IN ('kg', 'lb')),
  minor INTEGER NOT NULL CHECK (minor IN (0, 1)),
  created_at TEXT NOT NULL
) STRICT;

CREATE TABLE session (
  id TEXT PRIMARY KEY NOT NULL,
  trainee_id TEXT NOT NULL REFERENCES trainee (id) ON DELETE RESTRICT,
  title TEXT NOT NULL,
  date TEXT NOT NULL CHECK (date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  notes TEXT NOT NULL,
  pain_note TEXT NOT NULL,
  -- Who speaks, where it differs from the library: an imported review keeps its own.
  voice TEXT CHECK (voice IN ('coach', 'self')),
  coach TEXT,
  created_at TEXT NOT NULL
) STRICT;
CREATE INDEX session_trainee ON session (trainee_id);
CREATE INDEX session_date ON session (date);

CREATE TABLE entry (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
  ordinal INTEGER NOT NULL,
  exercise TEXT NOT NULL,
  plan_sets INTEGER CHECK (plan_sets BETWEEN 1 AND 50),
  plan_reps INTEGER CHECK (plan_reps BETWEEN 1 AND 500),
  plan_load_kg REAL CHECK (plan_load_kg BETWEEN 0 AND 1000),
  plan_tempo TEXT,
  plan_reps_in_reserve REAL CHECK (plan_reps_in_reserve BETWEEN 0 AND 20),
  sets_done INTEGER CHECK (sets_done BETWEEN 1 AND 50),
  CHECK ((plan_sets IS NULL) = (plan_reps IS NULL)),
  CHECK (plan_sets IS NOT NULL OR (plan_load_kg IS NULL AND plan_tempo IS NULL AND plan_reps_in_reserve IS NULL))
) STRICT;
CREATE INDEX entry_session ON entry (session_id);

-- What is known of one video file, once for all clips that show it; stays when a clip goes, so that undo finds it.
CREATE TABLE footage (
  id TEXT PRIMARY KEY NOT NULL,
  sha256 TEXT CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
  -- Name inside the clips folder; NULL = facts alone, the file is elsewhere.
  file TEXT CHECK (file NOT GLOB '*[/\]*'),
  size_bytes INTEGER CHECK (size_bytes >= 0),
  container TEXT NOT NULL,
  codec TEXT NOT NULL,
  width INTEGER NOT NULL CHECK (width >= 0),
  height INTEGER NOT NULL CHECK (height >= 0),
  rotation_deg INTEGER NOT NULL CHECK (rotation_deg IN (0, 90, 180, 270)),
  -- The upright picture in square pixels.
  shown_width INTEGER NOT NULL CHECK (shown_width >= 0),
  shown_height INTEGER NOT NULL CHECK (shown_height >= 0),
  frames INTEGER NOT NULL CHECK (frames >= 0),
  time_base_numerator INTEGER NOT NULL CHECK (time_base_numerator >= 1),
  time_base_denominator INTEGER NOT NULL CHECK (time_base_denominator >= 1),
  duration_us INTEGER NOT NULL CHECK (duration_us >= 0),
  constant_rate INTEGER NOT NULL CHECK (constant_rate IN (0, 1)),
  mean_fps REAL NOT NULL,
  capture_fps REAL,
  real_time_factor REAL NOT NULL CHECK (real_time_factor > 0),
  has_audio INTEGER NOT NULL CHECK (has_audio IN (0, 1)),
  plays TEXT CHECK (plays IN ('as-is', 'proxy')),
  proxy_reason TEXT NOT NULL,
  -- Names inside the pictures folder (poster, filmstrip) and the clips folder (proxy); NULL = not made.
  proxy_file TEXT CHECK (proxy_file NOT GLOB '*[/\]*'),
  poster_file TEXT CHECK (poster_file NOT GLOB '*[/\]*'),
  filmstrip_file TEXT CHECK (filmstrip_file NOT GLOB '*[/\]*'),
  filmstrip_pictures INTEGER NOT NULL CHECK (filmstrip_pictures >= 0),
  CHECK (file IS NULL OR (sha256 IS NOT NULL AND size_bytes IS NOT NULL AND plays IS NOT NULL))
) STRICT;
CREATE UNIQUE INDEX footage_content ON footage (sha256) WHERE file IS NOT NULL;

-- Frame times in display order, packed as little-endian 64-bit integers.
CREATE TABLE footage_frames (
  footage_id TEXT NOT NULL REFERENCES footage (id) ON DELETE CASCADE,
  plays_as TEXT NOT NULL CHECK (plays_as IN ('original', 'proxy')),
  time_base_numerator INTEGER NOT NULL CHECK (time_base_numerator >= 1),
  time_base_denominator INTEGER NOT NULL CHECK (time_base_denominator >= 1),
  ticks BLOB NOT NULL CHECK (length(ticks) % 8 = 0),
  end_ticks INTEGER NOT NULL CHECK (end_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  PRIMARY KEY (footage_id, plays_as)
) STRICT, WITHOUT ROWID;

CREATE TABLE clip (
  id TEXT PRIMARY KEY NOT NULL,
  entry_id TEXT NOT NULL REFERENCES entry (id) ON DELETE RESTRICT,
  footage_id TEXT REFERENCES footage (id) ON DELETE RESTRICT,
  ordinal INTEGER NOT NULL,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  view TEXT CHECK (view IN ('side', 'front', 'rear', 'oblique')),
  real_time_factor REAL NOT NULL CHECK (real_time_factor BETWEEN 0.01 AND 100),
  load_kg REAL CHECK (load_kg BETWEEN 0 AND 1000)
) STRICT;
CREATE INDEX clip_entry ON clip (entry_id);
CREATE INDEX clip_footage ON clip (footage_id);

CREATE TABLE rep (
  id TEXT PRIMARY KEY NOT NULL,
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  start_frame INTEGER CHECK (start_frame >= 0),
  start_ticks INTEGER CHECK (start_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  start_seconds REAL CHECK (start_seconds >= 0),
  long_end_frame INTEGER CHECK (long_end_frame >= 0),
  long_end_ticks INTEGER CHECK (long_end_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  long_end_seconds REAL CHECK (long_end_seconds >= 0),
  end_frame INTEGER CHECK (end_frame >= 0),
  end_ticks INTEGER CHECK (end_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  end_seconds REAL CHECK (end_seconds >= 0),
  CHECK ((start_frame IS NULL) = (start_ticks IS NULL) AND (start_frame IS NULL) <> (start_seconds IS NULL)),
  CHECK ((long_end_frame IS NULL) = (long_end_ticks IS NULL) AND (long_end_frame IS NULL OR long_end_seconds IS NULL)),
  CHECK ((end_frame IS NULL) = (end_ticks IS NULL) AND (end_frame IS NULL OR end_seconds IS NULL))
) STRICT;
CREATE INDEX rep_clip ON rep (clip_id);

CREATE TABLE flag (
  id TEXT PRIMARY KEY NOT NULL,
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  ordinal INTEGER NOT NULL,
  criterion TEXT NOT NULL,
  fault TEXT,
  weight TEXT NOT NULL CHECK (weight IN ('keep', 'prefer', 'adjust', 'correct', 'stop')),
  whole_set INTEGER NOT NULL CHECK (whole_set IN (0, 1)),
  at_frame INTEGER CHECK (at_frame >= 0),
  at_ticks INTEGER CHECK (at_ticks BETWEEN -9007199254740991 AND 9007199254740991),
  at_seconds REAL CHECK (at_seconds >= 0),
  note TEXT NOT NULL,
  cue TEXT NOT NULL,
  CHECK ((at_frame IS NULL) = (at_ticks IS NULL) AND (at_frame IS NULL) <> (at_seconds IS NULL))
) STRICT;
CREATE INDEX flag_clip ON flag (clip_id);

CREATE TABLE flag_rep (
  flag_id TEXT NOT NULL REFERENCES flag (id) ON DELETE RESTRICT,
  rep_id TEXT NOT NULL REFERENCES rep (id) ON DELETE RESTRICT,
  PRIMARY KEY (flag_id, rep_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX flag_rep_rep ON flag_rep (rep_id);

-- "Looked at and fine"; rep_id NULL = the whole set.
CREATE TABLE tick (
  id TEXT PRIMARY KEY NOT NULL,
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  criterion TEXT NOT NULL,
  rep_id TEXT REFERENCES rep (id) ON DELETE RESTRICT
) STRICT;
CREATE UNIQUE INDEX tick_clip ON tick (clip_id, criterion, rep_id);
CREATE UNIQUE INDEX tick_whole_set ON tick (clip_id, criterion) WHERE rep_id IS NULL;
CREATE INDEX tick_rep ON tick (rep_id);

-- Where the coach was; a view, never an act.
CREATE TABLE place (
  session_id TEXT PRIMARY KEY NOT NULL REFERENCES session (id) ON DELETE CASCADE,
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE CASCADE,
  frame INTEGER NOT NULL CHECK (frame >= 0)
) STRICT;
CREATE INDEX place_clip ON place (clip_id);

CREATE TABLE job (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK (kind IN ('demo', 'import', 'proxy')),
  title TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('waiting', 'running', 'done', 'failed', 'cancelled')),
  message TEXT NOT NULL,
  session_id TEXT REFERENCES session (id) ON DELETE CASCADE,
  clip_id TEXT REFERENCES clip (id) ON DELETE SET NULL,
  task TEXT NOT NULL CHECK (json_valid(task)),
  created_at TEXT NOT NULL
) STRICT;
CREATE INDEX job_session ON job (session_id);
CREATE INDEX job_clip ON job (clip_id);
CREATE INDEX job_state ON job (state);

-- The change log: one row an action of a person, with each row it changed before and after.
CREATE TABLE act (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  session_id TEXT REFERENCES session (id) ON DELETE CASCADE,
  name TEXT NOT NULL,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  undoable INTEGER NOT NULL CHECK (undoable IN (0, 1)),
  -- undone = redo can bring it back; dropped = undone, and another act has followed since.
  state TEXT NOT NULL CHECK (state IN ('done', 'undone', 'dropped'))
) STRICT;
CREATE INDEX act_session ON act (session_id, state);

CREATE TABLE act_change (
  act_id INTEGER NOT NULL REFERENCES act (id) ON DELETE CASCADE,
  ordinal INTEGER NOT NULL,
  table_name TEXT NOT NULL,
  row_key TEXT NOT NULL CHECK (json_valid(row_key)),
  before TEXT CHECK (json_valid(before)),
  after TEXT CHECK (json_valid(after)),
  PRIMARY KEY (act_id, ordinal),
  CHECK (before IS NOT NULL OR after IS NOT NULL)
) STRICT, WITHOUT ROWID;
