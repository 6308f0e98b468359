-- What is removed lies in a bin first: marked, and left out of everything, until it has lain there for thirty days.

ALTER TABLE session ADD COLUMN removed_at TEXT;
ALTER TABLE entry ADD COLUMN removed_at TEXT;
ALTER TABLE clip ADD COLUMN removed_at TEXT;
CREATE INDEX session_bin ON session (removed_at) WHERE removed_at IS NOT NULL;
CREATE INDEX entry_bin ON entry (removed_at) WHERE removed_at IS NOT NULL;
CREATE INDEX clip_bin ON clip (removed_at) WHERE removed_at IS NOT NULL;

-- 1 = it means nothing for the exercise that the clip is judged as by now; kept until that is another one again.
ALTER TABLE flag ADD COLUMN parked INTEGER NOT NULL DEFAULT 0 CHECK (parked IN (0, 1));
ALTER TABLE tick ADD COLUMN parked INTEGER NOT NULL DEFAULT 0 CHECK (parked IN (0, 1));

-- The other sessions that an act changed: it stands in their histories too.
CREATE TABLE act_also (
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE CASCADE,
  act_id INTEGER NOT NULL REFERENCES act (id) ON DELETE CASCADE,
  PRIMARY KEY (session_id, act_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX act_also_act ON act_also (act_id);

-- 1 = done with a session as a whole, at the desk, whose undo takes the newest of them back.
ALTER TABLE act ADD COLUMN at_desk INTEGER NOT NULL DEFAULT 0 CHECK (at_desk IN (0, 1));
CREATE INDEX act_desk ON act (id) WHERE at_desk = 1 AND state = 'done' AND undoable = 1;

-- Files whose rows are gone; a kill between the two leaves them to the next start.
CREATE TABLE file_to_remove (
  folder TEXT NOT NULL CHECK (folder IN ('clips', 'pictures', 'handovers')),
  name TEXT NOT NULL CHECK (length(name) > 0 AND name NOT GLOB '*[/\]*'),
  PRIMARY KEY (folder, name)
) STRICT, WITHOUT ROWID;

-- What the coach notes of a trainee for themselves, and since when the trainee is off the desk.
ALTER TABLE trainee ADD COLUMN notes TEXT NOT NULL DEFAULT '' CHECK (length(notes) <= 2000);
ALTER TABLE trainee ADD COLUMN archived_at TEXT;

-- 1 = its trainee is archived: on no list that a person works through.
ALTER TABLE session_summary ADD COLUMN archived INTEGER NOT NULL DEFAULT 0 CHECK (archived IN (0, 1));
DROP INDEX session_summary_done;
CREATE INDEX session_summary_done ON session_summary (second_look, due, date, created_at, session_id) WHERE archived = 0;
DROP INDEX session_summary_graded;
CREATE INDEX session_summary_graded ON session_summary (date, created_at, session_id)
  WHERE mark <> '' AND second_look = 0 AND read_only = 0 AND archived = 0;
