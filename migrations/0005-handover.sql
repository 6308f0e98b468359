-- What leaves the desk: how a trainee wants to be named in it, handovers as they were handed over, where they went, and
-- sessions that came from another desk and are only read.

ALTER TABLE trainee ADD COLUMN names TEXT NOT NULL DEFAULT 'full'
  CHECK (names IN ('full', 'first', 'initials', 'none'));
-- 1 = somebody else's judgement: no act changes it.
ALTER TABLE session ADD COLUMN read_only INTEGER NOT NULL DEFAULT 0 CHECK (read_only IN (0, 1));

-- A handover as it was handed over: its letter is kept as the sent letter it names, its documents as one zip among the
-- library's files. Never changed again.
CREATE TABLE handover (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE CASCADE,
  version INTEGER NOT NULL CHECK (version >= 1),
  handed_at TEXT NOT NULL,
  rubric_version INTEGER NOT NULL CHECK (rubric_version >= 1),
  letter_version INTEGER NOT NULL CHECK (letter_version >= 1),
  names TEXT NOT NULL CHECK (names IN ('full', 'first', 'initials', 'none')),
  manifest TEXT NOT NULL CHECK (json_valid(manifest)),
  -- SHA-256 of what it says: the same again is no new version.
  content_sha256 TEXT NOT NULL CHECK (length(content_sha256) = 64),
  -- Name inside the handovers folder, and SHA-256 of that file.
  file TEXT NOT NULL CHECK (length(file) > 0 AND file NOT GLOB '*[/\]*'),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
  -- The newest act of the session then: a newer one means that the session changed since.
  last_act INTEGER NOT NULL
) STRICT;
CREATE UNIQUE INDEX handover_version ON handover (session_id, version);
CREATE TRIGGER handover_frozen BEFORE UPDATE ON handover
BEGIN
  SELECT RAISE(ABORT, 'a handover is never changed');
END;

-- Each time that a version was written out.
CREATE TABLE handover_delivery (
  job_id TEXT PRIMARY KEY NOT NULL,
  handover_id TEXT NOT NULL REFERENCES handover (id) ON DELETE CASCADE,
  delivered_at TEXT NOT NULL,
  path TEXT NOT NULL,
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  -- [{"clip": …, "sentence": …}, …]: what could not be delivered.
  failed TEXT NOT NULL CHECK (json_valid(failed) AND json_type(failed) = 'array')
) STRICT;
CREATE INDEX handover_delivery_handover ON handover_delivery (handover_id);

-- A check can't be changed in place: the jobs move into a table that allows one kind more. Nothing points at a job.
CREATE TABLE job_of_more_kinds (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK (kind IN ('demo', 'import', 'proxy', 'measure', 'handover')),
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
