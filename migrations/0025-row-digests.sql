-- For each owner in each table (the flags of a clip) the sum of its rows' digests, kept in step with every change that the app
-- makes to them. Rows that changed on the disk by themselves no longer agree with it.
CREATE TABLE row_digest (
  table_name TEXT NOT NULL,
  owner TEXT NOT NULL,
  digest INTEGER NOT NULL,
  PRIMARY KEY (table_name, owner)
) STRICT, WITHOUT ROWID;
