-- A plan whose sets differ, as JSON {"sets":[{"reps":…}]}; one of equal sets stays in the columns of migration 0002.

ALTER TABLE entry ADD COLUMN plan_list TEXT CHECK (json_valid(plan_list));

-- What there is to train with, as JSON: the name of a usual place, or a list of items. NULL = not stated. A session's
-- own counts for its day; else its trainee's does.

ALTER TABLE trainee ADD COLUMN equipment TEXT CHECK (json_valid(equipment));
ALTER TABLE session ADD COLUMN equipment TEXT CHECK (json_valid(equipment));
