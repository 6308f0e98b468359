-- When the first frame of footage appears: its length alone doesn't tell when it ends. Frame times are packed as little-endian
-- 64-bit integers, so the first is put together from its eight bytes.

ALTER TABLE footage ADD COLUMN start_us INTEGER NOT NULL DEFAULT 0;

UPDATE footage SET start_us = COALESCE((
  SELECT CAST(round((
    WITH RECURSIVE byte (place) AS (SELECT 1 UNION ALL SELECT place + 1 FROM byte WHERE place < 8)
    SELECT sum((
      16 * (instr('0123456789ABCDEF', substr(hex(substr(times.ticks, place, 1)), 1, 1)) - 1)
      + instr('0123456789ABCDEF', substr(hex(substr(times.ticks, place, 1)), 2, 1)) - 1
    ) << (8 * (place - 1))) FROM byte
  ) * 1000000.0 * times.time_base_numerator / times.time_base_denominator) AS INTEGER)
  FROM footage_frames AS times
  WHERE times.footage_id = footage.id AND times.plays_as = 'original' AND length(times.ticks) >= 8
), 0);
