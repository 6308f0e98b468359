import * as v from 'valibot';
import { type FrameTable, frameTableSchema } from './frameTable.ts';

export type CheckedFrameTable =
  | { readonly ok: true; readonly table: FrameTable }
  | { readonly ok: false; readonly sentence: string };

const refuse = (why: string): CheckedFrameTable => ({ ok: false, sentence: `The frame times can't be used: ${why}.` });

/** Checks frame times read from outside: at least one frame, times strictly rising, the end after the last. */
export function checkFrameTable(input: unknown): CheckedFrameTable {
  const parsed = v.safeParse(frameTableSchema, input, { abortEarly: true });
  if (!parsed.success) return refuse('they are not whole ticks of a time base');
  const table = parsed.output;
  const last = table.ticks.at(-1);
  if (last === undefined) return refuse('there is no frame');
  const stuck = table.ticks.findIndex((ticks, i) => i > 0 && ticks <= (table.ticks[i - 1] ?? Number.NEGATIVE_INFINITY));
  if (stuck !== -1) return refuse(`frame ${stuck} does not come after the one before it`);
  if (table.endTicks <= last) return refuse('the clip ends before its last frame');
  return { ok: true, table };
}
