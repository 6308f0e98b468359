-- What a coach decides beyond flags: the rubric a session is judged by, a grade set by hand with its reason, letters
-- with their edits, letters that were sent, and the second look that checks a coach against themselves.

ALTER TABLE session ADD COLUMN rubric_version INTEGER NOT NULL DEFAULT 1 CHECK (rubric_version >= 1);
ALTER TABLE session ADD COLUMN override_score REAL CHECK (override_score BETWEEN 0 AND 100);
ALTER TABLE session ADD COLUMN override_reason TEXT
  CHECK ((override_reason IS NULL) = (override_score IS NULL) AND length(override_reason) BETWEEN 1 AND 500);
-- The session whose footage this one judges again, blind to what was judged there; such a session has no letter.
ALTER TABLE session ADD COLUMN second_look_of TEXT REFERENCES session (id) ON DELETE RESTRICT;
ALTER TABLE session ADD COLUMN letter_language TEXT NOT NULL DEFAULT 'en' CHECK (letter_language IN ('en', 'de'));
ALTER TABLE session ADD COLUMN letter_length TEXT NOT NULL DEFAULT 'full' CHECK (letter_length IN ('full', 'short'));
ALTER TABLE session ADD COLUMN letter_tone TEXT NOT NULL DEFAULT 'plain'
  CHECK (letter_tone IN ('plain', 'warm', 'direct'));
CREATE INDEX session_second_look ON session (second_look_of);

ALTER TABLE entry ADD COLUMN override_score REAL CHECK (override_score BETWEEN 0 AND 100);
ALTER TABLE entry ADD COLUMN override_reason TEXT
  CHECK ((override_reason IS NULL) = (override_score IS NULL) AND length(override_reason) BETWEEN 1 AND 500);

-- A paragraph of a letter in the coach's own words. `basis` is what the paragraph said by itself when it was edited:
-- when it would say something else now, the edit rests on something that has changed since.
CREATE TABLE letter_edit (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
  paragraph TEXT NOT NULL CHECK (length(paragraph) BETWEEN 1 AND 80),
  words TEXT NOT NULL CHECK (length(words) <= 4000),
  basis TEXT NOT NULL
) STRICT;
CREATE UNIQUE INDEX letter_edit_paragraph ON letter_edit (session_id, paragraph);

-- A letter as it was sent, with the data and the rubric it was graded with; never changed again.
CREATE TABLE sent_letter (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE CASCADE,
  version INTEGER NOT NULL CHECK (version >= 1),
  sent_at TEXT NOT NULL,
  rubric_version INTEGER NOT NULL CHECK (rubric_version >= 1),
  letter TEXT NOT NULL,
  -- The document, the review and the grade as JSON.
  document TEXT NOT NULL CHECK (json_valid(document)),
  review TEXT NOT NULL CHECK (json_valid(review)),
  grade TEXT NOT NULL CHECK (json_valid(grade)),
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64)
) STRICT;
CREATE UNIQUE INDEX sent_letter_version ON sent_letter (session_id, version);
CREATE TRIGGER sent_letter_frozen BEFORE UPDATE ON sent_letter
BEGIN
  SELECT RAISE(ABORT, 'a sent letter is never changed');
END;
