import * as v from 'valibot';
import { messageSchema } from '../../engine/message/message.ts';
import { nameModes } from '../../engine/names/shownName.ts';
import { daySchema } from '../../engine/time/day.ts';

export const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/));
/** Composed, so that two spellings of a name are one. */
export const name = v.pipe(v.string(), v.normalize('NFC'), v.trim(), v.minLength(1), v.maxLength(200));
export const remark = v.pipe(v.string(), v.maxLength(2000));
export const frame = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000));
/** A day that a person names. */
export const isoDate = daySchema;
/** A day as the library holds it: one that an older version let in stays to be seen, and to be mended. */
export const keptDate = v.pipe(v.string(), v.isoDate());
export const filePath = v.pipe(v.string(), v.minLength(1), v.maxLength(4096));
export const none = v.strictObject({});
export const isoTime = v.string();

/** How a page is lit. */
export const schemeSchema = v.picklist(['light', 'dark']);
export type Scheme = v.InferOutput<typeof schemeSchema>;

export const nameModeSchema = v.picklist(nameModes);

/** Where a page of a list goes on: what the page before gave as `next`; null for the first. */
export const pageParams = {
  after: v.optional(v.nullable(v.pipe(v.string(), v.maxLength(400))), null),
  limit: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(500)), 24),
};

export const historyStateSchema = v.strictObject({
  /** The action that undo would take back; null when there is none. */
  undo: v.nullable(messageSchema),
  redo: v.nullable(messageSchema),
});
export type HistoryState = v.InferOutput<typeof historyStateSchema>;

/** A schema whose value is one of the engine's own types: already checked where it was read. */
export const engineType = <T>() => v.custom<T>((value) => typeof value === 'object' && value !== null);
