-- What a person has set for the whole library, one row a setting, as JSON; without a row, what the app takes as usual.
-- Not an act: a setting judges nothing, and is changed back where it was changed.

CREATE TABLE setting (
  name TEXT PRIMARY KEY NOT NULL CHECK (length(name) BETWEEN 1 AND 60),
  value TEXT NOT NULL CHECK (json_valid(value))
) STRICT, WITHOUT ROWID;

-- Which kinds of jobs there are is checked where jobs are read; a check here could not be changed in place. Nothing points at a job.
CREATE TABLE job_of_any_kind (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK (length(kind) BETWEEN 1 AND 40),
  title TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('waiting', 'running', 'done', 'failed', 'cancelled')),
  message TEXT NOT NULL,
  session_id TEXT REFERENCES session (id) ON DELETE CASCADE,
  clip_id TEXT REFERENCES clip (id) ON DELETE SET NULL,
  task TEXT NOT NULL CHECK (json_valid(task)),
  created_at TEXT NOT NULL
) STRICT;
INSERT INTO job_of_any_kind SELECT number, id, kind, title, state, message, session_id, clip_id, task, created_at FROM job;
DROP TABLE job;
ALTER TABLE job_of_any_kind RENAME TO job;
CREATE INDEX job_session ON job (session_id);
CREATE INDEX job_clip ON job (clip_id);
CREATE INDEX job_state ON job (state);
