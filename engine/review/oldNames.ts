import { isRecord } from './plainData.ts';

type Fields = Readonly<Record<string, unknown>>;

/** A field under another name, in its place; unchanged where the record lacks it or has the other name too. */
function renamed(fields: Fields, from: string, to: string): Fields {
  if (!Object.hasOwn(fields, from) || Object.hasOwn(fields, to)) return fields;
  return Object.fromEntries(Object.entries(fields).map(([name, value]) => [name === from ? to : name, value]));
}

/** A list with each of its records changed; whatever else stands there stays. */
const each = (list: unknown, change: (fields: Fields) => Fields): unknown =>
  Array.isArray(list) ? list.map((item) => (isRecord(item) ? change(item) : item)) : list;

const within = (fields: Fields, name: string, change: (value: unknown) => unknown): Fields =>
  Object.hasOwn(fields, name) ? { ...fields, [name]: change(fields[name]) } : fields;

const edgeNow = (edge: unknown): unknown => (edge === 'longEnd' ? 'stretchedEnd' : edge);

const repNow = (rep: Fields): Fields =>
  within(renamed(rep, 'longEnd', 'stretchedEnd'), 'measured', (edges) =>
    Array.isArray(edges) ? edges.map(edgeNow) : edges,
  );

const clipNow = (clip: Fields): Fields => within(clip, 'reps', (reps) => each(reps, repNow));

const flagNow = (flag: Fields): Fields => renamed(flag, 'weight', 'severity');

const entryNow = (entry: Fields): Fields =>
  within(
    within(entry, 'clips', (clips) => each(clips, clipNow)),
    'flags',
    (flags) => each(flags, flagNow),
  );

/** Whether data claims to be a review of version 1 or 2 of the format. */
const isOld = (input: unknown): input is Fields => isRecord(input) && (input.version === 1 || input.version === 2);

/**
 * Data that claims to be a review, with what versions 1 and 2 of the format named otherwise under its name of today,
 * and of version 4; all that version 3 holds means the same there. Anything else as it is; nothing is checked. Expects that nothing hostile is in it.
 */
export const inNewNames = (input: unknown): unknown => {
  if (isOld(input)) return within({ ...input, version: 4 }, 'entries', (entries) => each(entries, entryNow));
  return isRecord(input) && input.version === 3 ? { ...input, version: 4 } : input;
};

/** Where something is in the names of the file that was read: one of version 1 or 2 has `weight` and `longEnd`. */
export const pathAsRead = (path: string, input: unknown): string =>
  isOld(input) ? path.replace(/\bseverity$/, 'weight').replace(/\bstretchedEnd\b/, 'longEnd') : path;
