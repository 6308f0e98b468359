import { timeBaseSchema } from '../time/frameTable.ts';
import { momentSchema } from '../time/moment.ts';
import { equalPlanSchema, plannedSetSchema } from './plan.ts';
import { clipFactsSchema, clipSchema, entrySchema, flagSchema, repSchema, reviewSchema, tickSchema } from './review.ts';
import type { Trouble } from './trouble.ts';

const forbiddenKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);
const deepest = 16;
const longestText = 10_000;
const longestKey = 100;
const mostValues = 5_000_000;

type Waiting = { readonly value: unknown; readonly path: string; readonly depth: number };

const knownFields: ReadonlySet<string> = new Set(
  [
    reviewSchema,
    reviewSchema.entries.trainee,
    reviewSchema.entries.session,
    entrySchema,
    equalPlanSchema,
    plannedSetSchema,
    clipSchema,
    clipFactsSchema,
    timeBaseSchema,
    ...momentSchema.options,
    repSchema,
    flagSchema,
    tickSchema,
  ].flatMap((schema) => Object.keys(schema.entries)),
);

/** The path of a key within a path. A field that the format doesn't know is never repeated: its owner is named instead. */
export const within = (path: string, key: unknown): string => {
  if (typeof key === 'number') return `${path}[${key}]`;
  if (typeof key !== 'string' || !knownFields.has(key)) return path;
  return path === '' ? key : `${path}.${key}`;
};

/** A plain object, also one made in another window or worker. */
export const isRecord = (value: unknown): value is Record<string, unknown> => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
};

function troubleOfKey(key: string): string | null {
  if (forbiddenKeys.has(key)) return 'has a field with a name that is not allowed: take it out';
  if (key.length > longestKey) return 'has a field with a name that is too long: take it out';
  return null;
}

function troubleOfScalar(value: unknown): string | null {
  if (value === undefined || value === null || typeof value === 'boolean') return null;
  if (typeof value === 'string') return value.length > longestText ? 'is a text far too long: shorten it' : null;
  if (typeof value === 'number') return Number.isFinite(value) ? null : 'is not a finite number: put a number there';
  return 'is not something that JSON can hold: leave it out';
}

/**
 * Looks for what no honest review holds, before any schema sees it: forbidden keys, endless nesting, giant
 * texts, numbers that aren't finite, values JSON doesn't know. Walks without recursion, so depth can't hurt it.
 */
export function findHostileValue(input: unknown): Trouble | null {
  const waiting: Waiting[] = [{ value: input, path: '', depth: 0 }];
  let seen = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, path, depth } = next;
    seen += 1;
    if (seen > mostValues) return { path: '', what: 'holds far too many values: split it into sessions' };
    if (typeof value !== 'object' || value === null) {
      const what = troubleOfScalar(value);
      if (what !== null) return { path, what };
      continue;
    }
    if (depth >= deepest) return { path, what: 'is nested too deeply: check that part' };
    if (Array.isArray(value)) {
      if (seen + value.length > mostValues) return { path, what: 'is a list far too long: shorten it' };
      for (let i = value.length - 1; i >= 0; i--) {
        waiting.push({ value: value[i], path: within(path, i), depth: depth + 1 });
      }
      continue;
    }
    if (!isRecord(value)) return { path, what: 'is not something that JSON can hold: leave it out' };
    for (const key of Object.keys(value)) {
      const what = troubleOfKey(key);
      if (what !== null) return { path, what };
      waiting.push({ value: value[key], path: within(path, key), depth: depth + 1 });
    }
  }
  return null;
}
