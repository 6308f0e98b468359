-- What is recorded of footage, what the coach says of a clip so that it can be measured, which edges of reps were
-- measured, and what became of the suggestions.

-- What was seen in footage. It hangs on the footage and on the clicks that steered it, never on a clip: the same
-- footage is followed once however many clips show it, a clip that goes and comes back finds it again, and taking a
-- click back goes back to what was recorded before it. No act changes it, and no row of an act points at it.
CREATE TABLE recording (
  footage_id TEXT NOT NULL REFERENCES footage (id) ON DELETE CASCADE,
  what TEXT NOT NULL CHECK (what IN ('disc', 'point', 'joints')),
  -- SHA-256 of the clicks; joints follow none.
  clicks TEXT NOT NULL CHECK (length(clicks) = 64),
  -- Name and version of the method: another one records again.
  method TEXT NOT NULL CHECK (length(method) BETWEEN 1 AND 200),
  recorded_at TEXT NOT NULL,
  -- JSON, packed with gzip: what was found (null = nothing), and the warnings.
  data BLOB NOT NULL,
  PRIMARY KEY (footage_id, what, clicks)
) STRICT;

CREATE TABLE clip_set_up (
  clip_id TEXT PRIMARY KEY NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  set_up TEXT NOT NULL CHECK (json_valid(set_up) AND json_type(set_up) = 'object')
) STRICT;

-- An accepted suggestion stays away as long as its flag is there; a dismissed one until it is brought back.
CREATE TABLE suggestion_answer (
  clip_id TEXT NOT NULL REFERENCES clip (id) ON DELETE RESTRICT,
  suggestion_id TEXT NOT NULL CHECK (length(suggestion_id) BETWEEN 1 AND 200),
  answer TEXT NOT NULL CHECK (answer IN ('accepted', 'dismissed')),
  flag_id TEXT REFERENCES flag (id) ON DELETE RESTRICT,
  PRIMARY KEY (clip_id, suggestion_id),
  CHECK ((answer = 'accepted') = (flag_id IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX suggestion_answer_flag ON suggestion_answer (flag_id);

-- 1 = the edge was measured; 0 = a person set it.
ALTER TABLE rep ADD COLUMN start_measured INTEGER NOT NULL DEFAULT 0 CHECK (start_measured IN (0, 1));
ALTER TABLE rep ADD COLUMN long_end_measured INTEGER NOT NULL DEFAULT 0 CHECK (long_end_measured IN (0, 1));
ALTER TABLE rep ADD COLUMN end_measured INTEGER NOT NULL DEFAULT 0 CHECK (end_measured IN (0, 1));

-- A check can't be changed in place: the jobs move into a table that allows one kind more. Nothing points at a job.
CREATE TABLE job_of_more_kinds (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK (kind IN ('demo', 'import', 'proxy', 'measure')),
  title TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('waiting', 'running', 'done', 'failed', 'cancelled')),
  message TEXT NOT NULL,
  session_id TEXT REFERENCES session (id) ON DELETE CASCADE,
  clip_id TEXT REFERENCES clip (id) ON DELETE SET NULL,
  task TEXT NOT NULL CHECK (json_valid(task)),
  created_at TEXT NOT NULL
) STRICT;
INSERT INTO job_of_more_kinds SELECT * FROM job;
DROP TABLE job;
ALTER TABLE job_of_more_kinds RENAME TO job;
CREATE INDEX job_session ON job (session_id);
CREATE INDEX job_clip ON job (clip_id);
CREATE INDEX job_state ON job (state);
