-- What measuring has to say is kept as data, which message and its values, and put into words where it is shown.

ALTER TABLE recording ADD COLUMN warnings TEXT NOT NULL DEFAULT '[]'
  CHECK (json_valid(warnings) AND json_type(warnings) = 'array');

-- What a suggestion said, as long as the flag's note is in its words; null for what a person wrote.
ALTER TABLE flag ADD COLUMN note_message TEXT
  CHECK (note_message IS NULL OR (json_valid(note_message) AND json_type(note_message) = 'object'));
