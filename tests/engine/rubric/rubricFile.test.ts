import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parseRubric } from '../../../engine/rubric/rubric.ts';

const file: unknown = JSON.parse(readFileSync(new URL('../../../seeds/rubric/v1.json', import.meta.url), 'utf8'));

it('reads the rubric that ships', () => {
  const parsed = parseRubric(file);
  expect(parsed.ok && parsed.rubric.criteria.map((criterion) => criterion.id)).toEqual([
    'depth',
    'eccentricTempo',
    'pauses',
    'barPath',
    'headPosition',
    'spinePosition',
  ]);
});

it('has a written anchor for every severity of every criterion, none said twice', () => {
  const parsed = parseRubric(file);
  const anchors = parsed.ok ? parsed.rubric.criteria.flatMap((criterion) => Object.values(criterion.anchors)) : [];
  expect(anchors).toHaveLength(30);
  expect(new Set(anchors).size).toBe(30);
  expect(anchors.every((anchor) => anchor.length > 30 && anchor.endsWith('.'))).toBe(true);
});

const broken: readonly [string, (rubric: Record<string, unknown>) => void, string][] = [
  [
    'a cost over 1',
    (rubric) => Object.assign(rubric, { cost: { keep: 0, prefer: 2, adjust: 1, correct: 1, stop: 1 } }),
    'cost.prefer',
  ],
  [
    'costs out of order',
    (rubric) => Object.assign(rubric, { cost: { keep: 0, prefer: 0.5, adjust: 0.2, correct: 0.6, stop: 1 } }),
    'costs must rise',
  ],
  [
    'no letter down to 0',
    (rubric) => Object.assign(rubric, { letters: [{ letter: 'A', from: 50, gradePoints: 4 }] }),
    'begin at 0',
  ],
  [
    'session shares over 1',
    (rubric) => Object.assign(rubric, { sessionShare: { technique: 0.9, programme: 0.2 } }),
    'add up to 1',
  ],
  [
    'no way to put a session together',
    (rubric) => Object.assign(rubric, { sessionShare: undefined }),
    'one of the two',
  ],
  [
    'two ways to put an exercise together',
    (rubric) => Object.assign(rubric, { exerciseScore: { meanShare: 0.5, lowest: [] } }),
    'one of the two',
  ],
  [
    'costs of the programme out of order',
    (rubric) =>
      Object.assign(rubric, {
        sessionShare: undefined,
        programmeCost: { keep: 0, prefer: 3, adjust: 2, correct: 6, stop: 10, most: 10 },
      }),
    'must rise',
  ],
  ['an unknown field', (rubric) => Object.assign(rubric, { extra: 1 }), 'extra'],
];

it.each(broken)('refuses %s', (_name, spoil, says) => {
  const copy = structuredClone(file) as Record<string, unknown>;
  spoil(copy);
  const parsed = parseRubric(copy);
  expect(parsed.ok ? '' : parsed.sentence).toContain(says);
});
