-- A flag has a severity, and a rep a stretched end: what both were called before is read from the change log alone.

ALTER TABLE flag RENAME COLUMN weight TO severity;
ALTER TABLE rep RENAME COLUMN long_end_frame TO stretched_end_frame;
ALTER TABLE rep RENAME COLUMN long_end_ticks TO stretched_end_ticks;
ALTER TABLE rep RENAME COLUMN long_end_seconds TO stretched_end_seconds;
ALTER TABLE rep RENAME COLUMN long_end_measured TO stretched_end_measured;
