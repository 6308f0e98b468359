-- A flag without a severity is a plain note: it judges nothing. A column can't lose its NOT NULL in place, so another takes its place.

ALTER TABLE flag ADD COLUMN severity_or_none TEXT
  CHECK (severity_or_none IN ('keep', 'prefer', 'adjust', 'correct', 'stop'));
UPDATE flag SET severity_or_none = severity;
ALTER TABLE flag DROP COLUMN severity;
ALTER TABLE flag RENAME COLUMN severity_or_none TO severity;
