-- Clips that show one set from several sides: which clip of the entry leads, and how much later a moment stands on this clip's
-- clock than on that one's, in real time. Which rep of one clip is which of another is kept by a name that they share. No foreign
-- key: a clip whose lead has gone leads its own set.

ALTER TABLE clip ADD COLUMN same_set_as TEXT;
ALTER TABLE clip ADD COLUMN same_set_offset_us INTEGER
  CHECK ((same_set_offset_us IS NULL) = (same_set_as IS NULL) AND same_set_as <> id);
CREATE INDEX clip_same_set ON clip (same_set_as) WHERE same_set_as IS NOT NULL;

ALTER TABLE rep ADD COLUMN same_rep TEXT;
