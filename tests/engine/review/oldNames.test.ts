import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseReview } from '../../../engine/review/parseReview.ts';
import { writeReview } from '../../../engine/review/writeReview.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import type { Loose } from './sample.ts';

/** Files as they were shipped when their version was the newest. */
const fileOf = (version: 1 | 2 | 3): Loose =>
  JSON.parse(readFileSync(new URL(`./oldFiles/version${version}.json`, import.meta.url), 'utf8'));

const shipped = shippedUnder(1);

const reviewOf = (input: unknown) => {
  const parsed = parseReview(input, shipped);
  if (!parsed.ok) throw new Error(parsed.sentence);
  return parsed.review;
};

const sentenceFor = (input: unknown): string => {
  const parsed = parseReview(input, shipped);
  return parsed.ok ? '' : parsed.sentence;
};

describe.each([1, 2] as const)('a file of version %i', (version) => {
  it('keeps every flag, its weight as the severity', () => {
    const told = (file: Loose, name: string) =>
      file.entries.flatMap(({ flags }: Loose) => flags.map((flag: Loose) => [flag.id, flag[name], flag.note ?? '']));
    const file = fileOf(version);
    expect(told(reviewOf(file), 'severity')).toEqual(told(file, 'weight'));
    expect(told(file, 'weight').length).toBeGreaterThan(2);
  });

  it('keeps the moments of every rep', () => {
    const moments = (file: Loose, name: string) =>
      file.entries.flatMap(({ clips }: Loose) =>
        clips.flatMap(({ reps = [] }: Loose) => reps.map((rep: Loose) => [rep.start, rep[name], rep.end])),
      );
    const file = fileOf(version);
    expect(moments(reviewOf(file), 'stretchedEnd')).toEqual(moments(file, 'longEnd'));
  });

  it('is the same review once it was written as the newest version', () => {
    const read = reviewOf(fileOf(version));
    expect(read.version).toBe(4);
    expect(reviewOf(JSON.parse(writeReview(read)))).toEqual(read);
  });

  it('is told what is wrong by the names that stand in it', () => {
    const file = fileOf(version);
    file.entries[0].flags[0].weight = 'awful';
    expect(sentenceFor(file)).toBe(
      'entries[0].flags[0].weight must be one of keep, prefer, adjust, correct, stop, but is the text "awful".',
    );
  });

  it('has one name for the severity, not both', () => {
    const file = fileOf(version);
    file.entries[0].flags[0].severity = 'stop';
    expect(sentenceFor(file)).toMatch(/entries\[0\]\.flags\[0\] has a field "weight" that the format doesn't know/);
  });
});

it('names the measured edges anew', () => {
  const file = fileOf(1);
  file.entries[0].clips[0].reps[0].measured = ['start', 'longEnd'];
  expect(reviewOf(file).entries[0]?.clips[0]?.reps[0]?.measured).toEqual(['start', 'stretchedEnd']);
});

it('reads a file of version 3 as it is', () => {
  const { version, ...kept } = reviewOf(fileOf(3));
  expect(version).toBe(4);
  expect(reviewOf({ ...fileOf(3), version: 4 })).toEqual({ version, ...kept });
  expect(kept.entries.flatMap(({ flags }) => flags).length).toBeGreaterThan(2);
});

it('takes no old name in a file of version 3', () => {
  const file = { ...fileOf(1), version: 3 };
  expect(sentenceFor(file)).not.toBe('');
});
