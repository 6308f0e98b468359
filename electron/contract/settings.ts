import * as v from 'valibot';
import { act, read } from './kinds.ts';
import { none } from './shapes.ts';

/** What a person sets for the whole library; a value that is not set is the usual one, given here. */
export const settingsSchema = v.strictObject({
  /** Whether a clip is measured by itself once it is in. */
  measureByItself: v.optional(v.boolean(), true),
});
export type Settings = v.InferOutput<typeof settingsSchema>;

export const settingRequests = {
  'settings.get': read({ params: none, result: settingsSchema }),
  /** Sets what is named and leaves the rest; tells `settingsChanged`. */
  'settings.change': act({ params: v.partial(settingsSchema), result: none }),
} as const;
