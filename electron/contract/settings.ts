import * as v from 'valibot';
import { act, read } from './kinds.ts';
import { filePath, id, none } from './shapes.ts';

/** The longest time that can be promised. */
export const mostDaysPromised = 60;

/** After so many minutes without use the window can close by itself. */
export const closingMinutes = [5, 15, 30, 60] as const;

/** The keys that can set a phrase into a text, together with Ctrl or Command. */
export const phraseKeys = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

/** A text that a coach writes often. Its places `{name}` and `{exercise}` are filled where it is set in. */
const phraseSchema = v.strictObject({
  id,
  name: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60)),
  text: v.pipe(v.string(), v.maxLength(2000)),
  key: v.nullable(v.picklist(phraseKeys)),
});
export type Phrase = v.InferOutput<typeof phraseSchema>;

const oneKeyEach = (phrases: Phrase[]): boolean => {
  const keys = phrases.flatMap(({ key }) => (key === null ? [] : [key]));
  return new Set(keys).size === keys.length;
};

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
  /** After how many minutes without use the window closes, and the library with it; null = never. */
  closeAfterMinutes: v.optional(v.nullable(v.picklist(closingMinutes)), null),
  /** The coach's own phrases, in their order. */
  phrases: v.optional(v.pipe(v.array(phraseSchema), v.maxLength(60), v.check(oneKeyEach)), []),
});
export type Settings = v.InferOutput<typeof settingsSchema>;

export const settingRequests = {
  'settings.get': read({ params: none, result: settingsSchema }),
  /** Whether a setting was changed on the disk by a fault, so that its usual value applies until something is set. */
  'settings.damaged': read({ params: none, result: v.boolean() }),
  /** Sets what is named and leaves the rest; tells `settingsChanged`. */
  'settings.change': act({ params: v.partial(settingsSchema), result: none }),
} as const;
