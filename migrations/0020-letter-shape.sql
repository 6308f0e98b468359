-- What a coach made of a letter beyond its words: their own paragraphs, paragraphs that are left out, and the order.
-- Letters that were sent hold their whole document already and stay as they are.

-- A paragraph of the coach's own. `basis` is what it rested on when it was written, such as pain that was noted.
CREATE TABLE letter_paragraph (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
  words TEXT NOT NULL CHECK (length(words) <= 4000),
  basis TEXT NOT NULL
) STRICT;
CREATE INDEX letter_paragraph_session ON letter_paragraph (session_id);

-- A paragraph, planned or of the coach's own, that the letter is sent without.
CREATE TABLE letter_left_out (
  id TEXT PRIMARY KEY NOT NULL,
  session_id TEXT NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
  paragraph TEXT NOT NULL CHECK (length(paragraph) BETWEEN 1 AND 80)
) STRICT;
CREATE UNIQUE INDEX letter_left_out_paragraph ON letter_left_out (session_id, paragraph);

-- The ids of a letter's parts in the coach's order; without a row, as they are planned.
CREATE TABLE letter_order (
  session_id TEXT PRIMARY KEY NOT NULL REFERENCES session (id) ON DELETE RESTRICT,
  parts TEXT NOT NULL CHECK (json_valid(parts))
) STRICT, WITHOUT ROWID;
