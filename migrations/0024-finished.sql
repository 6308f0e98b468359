-- When the coach said that a session is finished without a letter; null = it is not. Nothing is due of it then.
ALTER TABLE session ADD COLUMN finished_at TEXT;

-- What the desk's undo took back and its redo can do again.
CREATE INDEX act_desk_undone ON act (id) WHERE at_desk = 1 AND state = 'undone' AND undoable = 1;
