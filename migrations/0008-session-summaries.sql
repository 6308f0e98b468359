-- What the desk shows of a session, kept beside it: derived data, written with each act in the act's own transaction, and
-- made anew where it was made by another version of the app or its judging data. No act remembers these rows.

CREATE TABLE session_summary (
  session_id TEXT PRIMARY KEY NOT NULL REFERENCES session (id) ON DELETE CASCADE,
  -- The session's own columns that lists are sorted and chosen by.
  trainee_id TEXT NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
  date TEXT NOT NULL,
  created_at TEXT NOT NULL,
  second_look INTEGER NOT NULL CHECK (second_look IN (0, 1)),
  read_only INTEGER NOT NULL CHECK (read_only IN (0, 1)),
  -- ["back-squat", …]: the exercises in their order.
  exercises TEXT NOT NULL CHECK (json_valid(exercises) AND json_type(exercises) = 'array'),
  clips INTEGER NOT NULL CHECK (clips >= 0),
  flags INTEGER NOT NULL CHECK (flags >= 0),
  -- '' without a grade.
  mark TEXT NOT NULL,
  score REAL CHECK ((score IS NULL) = (mark = '')),
  provisional INTEGER NOT NULL CHECK (provisional IN (0, 1)),
  by_hand INTEGER NOT NULL CHECK (by_hand IN (0, 1)),
  coverage REAL NOT NULL CHECK (coverage BETWEEN 0 AND 1),
  -- 1 until the session has a whole grade.
  unfinished INTEGER NOT NULL CHECK (unfinished IN (0, 1)),
  -- What it was made from: the newest act (0 = none), the rubric's version, and SHA-256 of the judging data.
  last_act INTEGER NOT NULL CHECK (last_act >= 0),
  rubric_version INTEGER NOT NULL CHECK (rubric_version >= 1),
  -- '' = not made yet.
  judging_sha256 TEXT NOT NULL,
  -- SHA-256 of what the session would hand over; NULL = not known since something changed.
  content_sha256 TEXT CHECK (length(content_sha256) = 64)
) STRICT;
-- The desk: what is unfinished first, then the newest.
CREATE INDEX session_summary_desk ON session_summary (second_look, unfinished, date, created_at, session_id);
-- What can be handed over.
CREATE INDEX session_summary_graded ON session_summary (date, created_at, session_id)
  WHERE mark <> '' AND second_look = 0 AND read_only = 0;
-- Whose contents are known, to be forgotten together.
CREATE INDEX session_summary_content ON session_summary (trainee_id) WHERE content_sha256 IS NOT NULL;
CREATE INDEX session_summary_trainee ON session_summary (trainee_id);
CREATE INDEX session_summary_made ON session_summary (rubric_version, judging_sha256);

INSERT INTO session_summary
  SELECT id, trainee_id, date, created_at, second_look_of IS NOT NULL, read_only, '[]', 0, 0, '', NULL, 0, 0, 0, 1, 0,
    rubric_version, '', NULL
  FROM session;

-- All sessions, the newest first, and the sessions of one trainee in their order.
DROP INDEX session_date;
CREATE INDEX session_newest ON session (date, created_at, id);
DROP INDEX session_trainee;
CREATE INDEX session_trainee ON session (trainee_id, date, created_at, id);
