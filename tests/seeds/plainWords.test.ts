import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { appFolder, shippedUnder } from './shippedCatalogue.ts';

const versions = readdirSync(path.join(appFolder, 'seeds/rubric')).map((name) => Number(name.replace(/\D/g, '')));

/** All that the data of the exercises and the rubric can say in English. */
function englishOf({ rubric, exercises }: Catalogue): string[] {
  const ids = new Set(exercises.map(({ id }) => id));
  return [
    ...rubric.criteria.flatMap(({ name, question, elsewhere, anchors }) => [
      ...[name, question, ...(elsewhere === undefined ? [] : [elsewhere.name])],
      ...Object.values(anchors),
    ]),
    ...exercises.flatMap((exercise) => [
      ...[exercise.name, exercise.stretchedEnd, exercise.shortenedEnd, exercise.targets.depth, exercise.targets.spine],
      ...[exercise.ladder.easier, exercise.ladder.harder, exercise.ladder.betterSuited]
        .flat()
        .flatMap(({ exercise: step, why }) => (ids.has(step) ? [why] : [step, why])),
      ...exercise.faults.flatMap(({ name, seen, why, cue, drill, proof }) => [
        ...[name, seen, why, cue.outcome, cue.body, drill, proof],
      ]),
    ]),
  ];
}

const catalogues = versions.map(shippedUnder);
const english = [...new Set(catalogues.flatMap(englishOf))];
const cues = [
  ...new Set(catalogues.flatMap(({ exercises }) => exercises.flatMap(({ faults }) => faults.map(({ cue }) => cue)))),
];
const cautions = new Set(shippedUnder(1).cautions.flatMap(({ topic, text }) => [topic, text]));
const german = Object.entries(
  shippedUnder(1).translations?.find(({ language }) => language === 'de')?.texts ?? {},
).filter(([text]) => !/\d{4}/.test(text) && !cautions.has(text));

// Words of the trade and of a gym, agreed for this program; common practice, no source.
describe('the English of the exercises', () => {
  it.each([
    ['the ends of a rep are stretched and shortened', /\b(long|short) (end|pause)s?\b/i],
    ['a pause lasts, it does not read', /\breads at least\b/i],
    ['a load is set down by per cent', /\ba tenth (off|less)\b/i],
    ['a dumbbell is no bell', /(?<!\p{L})bells?\b/iu],
    ['a lift of a house is an elevator', /\bslow lift\b|like a lift\b|lift shaft/i],
    ['an exercise has variations', /\bvariants?\b/i],
    ['severity is not weight', /\bweight of (a|the) (flag|note|remark)/i],
    ['things are written down, not kept on record', /\bbelongs? to the record\b|\bpart of the record\b/i],
  ])('%s', (_, word) => {
    expect(english.filter((text) => word.test(text))).toEqual([]);
  });

  it('gives orders, not riddles: nothing is a ghost, a word or a photograph', () => {
    const riddle = /\b(ghost|one word|photograph|visit|plumb line|hat|home)\b/i;
    expect(cues.flatMap(({ outcome, body }) => [outcome, body]).filter((cue) => riddle.test(cue))).toEqual([]);
  });

  it('speaks of range, not of depth, where a lift is pressed, rowed or curled', () => {
    const upper = ['curl', 'elbow extension', 'horizontal press', 'horizontal row', 'vertical press', 'vertical pull'];
    const found = shippedUnder(3).exercises.flatMap(({ id, pattern, faults }) =>
      upper.includes(pattern)
        ? faults
            .filter(({ name, cue, proof }) => /\bdepth\b/i.test([name, cue.outcome, cue.body, proof].join(' ')))
            .map((fault) => `${id} ${fault.id}`)
        : [],
    );
    expect(found).toEqual([]);
  });
});

describe('the German of the exercises', () => {
  it.each([
    ['Startposition', /Ausgangsstellung/],
    ['Box', /(?<!\p{L})Kasten|Kästen/u],
    ['Streck…, nie Reich…', /(?<!\p{L})Reich(e|st)? (mit|jedes|die|den|zur|zum|bis)(?!\p{L})|Reichweite/u],
    ['Zählzeit, nie Zähler', /Zähler/],
    ['Bewertungsraster neben Maßstab', /Rackside-Maßstab/],
    ['Shirt', /(?<!\p{L})Hemd(?!knopf)/u],
    ['Pausen, nicht Ruhe', /Lange Ruhe|Sekunden Ruhe (unten|oben|in der|mit|am|an)/],
    ['ein Video ist kein Film', /(im|auf dem|der|den|dem) Film(?!\p{L})/u],
    ['schnell, nicht Geschwindigkeitsbogen', /Geschwindigkeitsbogen/],
  ])('%s', (_, word) => {
    expect(german.filter(([, to]) => word.test(to))).toEqual([]);
  });

  it('bends reflexively: the knees bend themselves', () => {
    const bends =
      /^(Die|Beide|Ein|Der) (Knie|Ellbogen|Hüfte|Handgelenke|Arme) (beugen|beugt|strecken|streckt)(?!\p{L})/u;
    expect(german.filter(([, to]) => bends.test(to) && !/ sich(?!\p{L})/u.test(to))).toEqual([]);
  });
});
