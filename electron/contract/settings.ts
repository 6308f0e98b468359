import * as v from 'valibot';
import { act, read } from './kinds.ts';
import { filePath, none } from './shapes.ts';

/** The longest time that can be promised. */
export const mostDaysPromised = 60;

/** What a person sets for the whole library; a value that is not set is the usual one, given here. */
export const settingsSchema = v.strictObject({
  /** Whether a clip is measured by itself once it is in. */
  measureByItself: v.optional(v.boolean(), true),
  /** Whether no further clip is taken up to be measured with its joints, until somebody goes on. */
  measuringPaused: v.optional(v.boolean(), false),
  /** How many days after footage came its session is promised back. */
  daysPromised: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostDaysPromised)), 3),
  /** The folder whose new clips come into the inbox by themselves; null = none. */
  watchedFolder: v.optional(v.nullable(filePath), null),
});
export type Settings = v.InferOutput<typeof settingsSchema>;

export const settingRequests = {
  'settings.get': read({ params: none, result: settingsSchema }),
  /** Sets what is named and leaves the rest; tells `settingsChanged`. */
  'settings.change': act({ params: v.partial(settingsSchema), result: none }),
} as const;
