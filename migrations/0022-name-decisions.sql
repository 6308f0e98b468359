-- What a coach said of a place that may hold the hidden name of a trainee, or an ordinary word. It is found again by the words around it:
-- when these change, somebody has to look again. Of what was said over a clip, the word is the sound's SHA-256.
CREATE TABLE name_decision (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
  -- Which text of the session: what it is, and of what, such as 'note/' and the flag's id.
  place TEXT NOT NULL CHECK (length(place) BETWEEN 1 AND 120),
  words_before TEXT NOT NULL,
  word TEXT NOT NULL CHECK (length(word) > 0),
  words_after TEXT NOT NULL,
  verdict TEXT NOT NULL CHECK (verdict IN ('name', 'noName'))
) STRICT;
CREATE UNIQUE INDEX name_decision_place ON name_decision (session_id, place, words_before, word, words_after);
