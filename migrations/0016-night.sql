-- What the desk shows of a session's way from its first clip to its trainee, and in which order jobs are taken up.

-- How a session stood when its letter was last sent or it was last handed over: how many of its acts stood then that changed
-- something, and the newest of them. As acts are taken back from the newest on, both are the same again only where the
-- session is as it was. Not an act itself, and not remembered by any.
CREATE TABLE session_sent (
  session_id TEXT PRIMARY KEY NOT NULL REFERENCES session (id) ON DELETE CASCADE,
  sent_at TEXT NOT NULL,
  standing_acts INTEGER NOT NULL CHECK (standing_acts >= 0),
  newest_act INTEGER NOT NULL CHECK (newest_act >= 0)
) STRICT;

INSERT INTO session_sent
  SELECT sent.session_id, sent.at,
    (SELECT count(*) FROM act WHERE act.session_id = sent.session_id AND act.state = 'done' AND act.at <= sent.at
       AND EXISTS (SELECT 1 FROM act_change WHERE act_change.act_id = act.id)),
    (SELECT coalesce(max(act.id), 0) FROM act WHERE act.session_id = sent.session_id AND act.state = 'done'
       AND act.at <= sent.at AND EXISTS (SELECT 1 FROM act_change WHERE act_change.act_id = act.id))
  FROM (
    SELECT session_id, max(at) AS at FROM (
      SELECT session_id, sent_at AS at FROM sent_letter
      UNION ALL
      SELECT session_id, handed_at AS at FROM handover
    ) GROUP BY session_id
  ) AS sent;

ALTER TABLE session_summary ADD COLUMN state TEXT NOT NULL DEFAULT 'new'
  CHECK (state IN ('new', 'inWork', 'judged', 'sent', 'changedSince'));
-- When its first clip came; '' without any.
ALTER TABLE session_summary ADD COLUMN came_at TEXT NOT NULL DEFAULT '';
-- How many of its clips have been measured, and about how many still have to be judged.
ALTER TABLE session_summary ADD COLUMN measured INTEGER NOT NULL DEFAULT 0 CHECK (measured >= 0);
ALTER TABLE session_summary ADD COLUMN clips_left INTEGER NOT NULL DEFAULT 0 CHECK (clips_left >= 0);
-- 1 = somebody waits for it, 2 = it waits for its clips, 0 = nothing is to do: sent, received, or a second look.
ALTER TABLE session_summary ADD COLUMN due INTEGER NOT NULL DEFAULT 0 CHECK (due IN (0, 1, 2));
-- What is due, in the order it is done: what came first is first.
CREATE INDEX session_summary_due ON session_summary (due, came_at, session_id) WHERE due > 0;
-- What is done, the newest day first.
CREATE INDEX session_summary_done ON session_summary (second_look, due, date, created_at, session_id);
DROP INDEX session_summary_desk;
-- Sessions with clips that are not measured yet, the newest day first.
CREATE INDEX session_summary_unmeasured ON session_summary (date, created_at, session_id) WHERE measured < clips;
-- Made anew for what it tells besides now.
UPDATE session_summary SET judging_sha256 = '';

-- Jobs of one lane are taken up by their rank, then in the order asked for. Below 0: as a person put them; 0: asked for by a
-- person; above: what the app does by itself.
ALTER TABLE job ADD COLUMN rank INTEGER NOT NULL DEFAULT 0;
