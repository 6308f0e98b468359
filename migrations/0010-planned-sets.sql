-- A plan whose sets differ, as JSON {"sets":[{"reps":…}]}; one of equal sets stays in the columns of migration 0002.

ALTER TABLE entry ADD COLUMN plan_list TEXT CHECK (json_valid(plan_list));
