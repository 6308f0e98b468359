import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Catalogue, Translation } from '../../engine/exercises/catalogue.ts';
import { appFolder, shippedUnder } from './shippedCatalogue.ts';

const versions = readdirSync(path.join(appFolder, 'seeds/rubric')).map((name) => Number(name.replace(/\D/g, '')));
const texts = shippedUnder(1).translations?.find(({ language }) => language === 'de')?.texts ?? {};

/** Cues that were worded otherwise before, each under the English that a flag may hold. */
const earlierCues = Object.keys(
  (JSON.parse(readFileSync(path.join(appFolder, 'seeds/language/de-earlier-cues.json'), 'utf8')) as Translation).texts,
);

/** The texts of the data that a letter or a sheet can say. */
function saidOf({ rubric, exercises, cautions }: Catalogue): string[] {
  return [
    rubric.name,
    ...rubric.criteria.flatMap(({ name, elsewhere, anchors }) => [name, elsewhere?.name ?? name, anchors.keep]),
    ...cautions.flatMap(({ topic, text }) => [topic, text]),
    ...exercises.flatMap((exercise) => [
      exercise.name,
      exercise.stretchedEnd,
      exercise.shortenedEnd,
      ...(exercise.rangeCut === undefined ? [] : [exercise.rangeCut.by, exercise.rangeCut.remedy ?? []].flat()),
      ...exercise.muscles.direct,
      ...exercise.muscles.indirect,
      ...exercise.faults.flatMap(({ name, seen, why, cue, drill, proof }) => [
        ...[name, seen, why, cue.outcome, cue.body, drill, proof],
      ]),
    ]),
  ];
}

/** The texts of the ladders, which the programme can say: rungs that are no exercise of the library, and why they stand there. */
function ladderTextsOf({ exercises }: Catalogue): string[] {
  const ids = new Set(exercises.map(({ id }) => id));
  return exercises.flatMap(({ ladder }) =>
    [...ladder.easier, ...ladder.harder, ...ladder.betterSuited].flatMap(({ exercise, why }) =>
      ids.has(exercise) ? [why] : [exercise, why],
    ),
  );
}

const isCitation = (text: string): boolean => /\d{4}/.test(text);
const sourcesOf = ({ exercises }: Catalogue): string[] =>
  exercises.flatMap(({ faults }) => faults.map(({ source }) => source)).filter((source) => !isCitation(source));

const said = new Set([
  ...versions.flatMap((version) => saidOf(shippedUnder(version))),
  ...ladderTextsOf(shippedUnder(1)),
]);
const english = /\b(the|and|of|with|is|are|every|your|reps?|which|from|to|than|it|its|not|one|two|for|by)\b/;

describe('the German of the judging data', () => {
  it('has every text that a letter or a sheet can say, under every rubric', () => {
    expect([...said].filter((text) => !Object.hasOwn(texts, text))).toEqual([]);
    const sources = versions.flatMap((version) => sourcesOf(shippedUnder(version)));
    expect(sources.filter((text) => !Object.hasOwn(texts, text))).toEqual([]);
  });

  it('keeps the places of a sentence', () => {
    const places = (text: string): string[] => [...new Set(text.match(/\{\w+\}/g))].sort();
    for (const [from, to] of Object.entries(texts)) expect([from, places(to)]).toEqual([from, places(from)]);
  });

  it('keeps every number with its unit, the decimal point a comma', () => {
    const figures = (text: string): string[] => (text.match(/\d+([.,]\d+)?(?= (cm|kg|m|%))/g) ?? []).sort();
    for (const [from, to] of Object.entries(texts)) {
      expect([from, figures(to)]).toEqual([from, figures(from).map((figure) => figure.replace('.', ','))]);
      if (!isCitation(from)) expect(to).not.toMatch(/\d\.\d/);
    }
  });

  it('says nothing in English', () => {
    const left = Object.entries(texts).filter(
      ([from, to]) => !isCitation(from) && english.test(to.replace(/\{\w+\}/g, '')),
    );
    expect(left).toEqual([]);
  });

  it('counts and sets up in the words of a German gym', () => {
    const stilted = Object.entries(texts).filter(([, to]) => /Zähler|(vom|des|beim|derselbe) Aufbau/i.test(to));
    expect(stilted).toEqual([]);
  });

  it('ends a sentence where the English does', () => {
    for (const [from, to] of Object.entries(texts)) expect([to, /[.]$/.test(to)]).toEqual([to, /[.]$/.test(from)]);
  });

  it('has cues of at most eight words', () => {
    const cues = versions.flatMap((version) =>
      shippedUnder(version).exercises.flatMap(({ faults }) => faults.flatMap(({ cue }) => [cue.outcome, cue.body])),
    );
    const long = [...new Set(cues)].map((cue) => texts[cue] ?? '').filter((cue) => cue.split(/\s+/).length > 8);
    expect(long).toEqual([]);
  });

  it('begins what is seen with a capital, since it stands as a sentence after a colon', () => {
    const seen = versions.flatMap((version) =>
      shippedUnder(version).exercises.flatMap(({ faults }) => faults.map((fault) => texts[fault.seen] ?? '')),
    );
    for (const text of new Set(seen)) expect(text).toMatch(/^[A-ZÄÖÜ].*[^.]$/);
  });

  it('gives two faults of an exercise two names', () => {
    for (const version of versions) {
      for (const { name, faults } of shippedUnder(version).exercises) {
        const english = new Set(faults.map((fault) => fault.name));
        const own = new Set([...english].map((fault) => texts[fault]));
        expect([name, own.size]).toEqual([name, english.size]);
      }
    }
  });

  it('gives two exercises two names', () => {
    const names = shippedUnder(1).exercises.map(({ name }) => texts[name]);
    expect(new Set(names).size).toBe(names.length);
  });

  it('translates no word that data is looked up by', () => {
    const { exercises, cautions } = shippedUnder(1);
    const words = [
      ...exercises.flatMap(({ bestView, beginsWith, lowerEnd, trackedPoint, hardestAt, targets }) => [
        ...[bestView, beginsWith, lowerEnd, trackedPoint, hardestAt, targets.path.shape],
      ]),
      ...exercises.flatMap(({ faults }) => faults.map(({ usualSeverity }) => usualSeverity)),
      ...cautions.map(({ applies }) => applies),
    ];
    expect(words.filter((word) => Object.hasOwn(texts, word))).toEqual([]);
  });

  it('still has the cues of earlier libraries, which flags of earlier sessions hold', () => {
    const today = shippedUnder(1).exercises.flatMap(({ faults }) =>
      faults.flatMap(({ cue }) => [cue.outcome, cue.body]),
    );
    expect(earlierCues.filter((cue) => today.includes(cue))).toEqual([]);
    // Two cues of an earlier library.
    expect(texts['Turn round like a slow lift']).toMatch(/Aufzug/);
    expect(texts['Go as far with the heavy set']).toMatch(/schwer/);
  });

  it('holds no text that nothing says any more', () => {
    const known = new Set([
      ...said,
      ...versions.flatMap((version) => sourcesOf(shippedUnder(version))),
      ...shippedUnder(1).exercises.flatMap(({ faults }) => faults.map(({ source }) => source)),
      ...earlierCues,
    ]);
    expect(Object.keys(texts).filter((text) => !known.has(text))).toEqual([]);
  });
});
