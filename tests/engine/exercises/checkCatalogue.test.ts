import { describe, expect, it } from 'vitest';
import { buildCatalogue, type CatalogueInput } from '../../../engine/exercises/buildCatalogue.ts';
import { fault } from '../catalogue.ts';
import { file, input, sharedFaults, squat } from './data.ts';

const one = (change: Parameters<typeof squat>[0]) => input(file({ exercises: [squat(change)] }));
const ladder = { easier: [], harder: [], betterSuited: [] };
const tempo = squat().targets.tempo;

describe('a catalogue that is wrong', () => {
  const cases: readonly (readonly [string, CatalogueInput, readonly string[]])[] = [
    [
      'a field missing',
      input(file({ exercises: [{ ...squat(), name: undefined }] })),
      ['squat.json', 'exercises.0.name'],
    ],
    ['a field too many', input(file({ extra: 1 })), ['squat.json', 'extra']],
    ['two exercises with one id', input(file({ exercises: [squat(), squat()] })), ['"squat" appears twice']],
    ['one id in two files', input(file(), file({}, 'exercises/other.json')), ['"squat" appears twice']],
    [
      'two shared faults with one id',
      input(file({ faults: [...sharedFaults, fault('depthOne', 'depth')] })),
      ['squat.json', '"depthOne"'],
    ],
    [
      'two own faults with one id',
      one({ faults: [fault('own', 'depth'), fault('own', 'pauses')] }),
      ['squat.json', 'squat', '"own"'],
    ],
    [
      'a criterion that the rubric has not',
      input(file({ faults: [...sharedFaults, fault('odd', 'colour')] })),
      ['odd', '"colour"', 'rubric'],
    ],
    [
      'shares that do not add up',
      one({ criteria: squat().criteria.slice(1), judgedFrom: { side: ['pauses'] } }),
      ['squat.json', 'squat', '0.75'],
    ],
    ['a criterion twice', one({ criteria: [...squat().criteria, { id: 'depth', share: 0 }] }), ['criteria', '"depth"']],
    [
      'a view that judges an unknown criterion',
      one({ judgedFrom: { side: ['depth', 'colour'] } }),
      ['judgedFrom side', '"colour"'],
    ],
    ['a best view that judges nothing', one({ bestView: 'oblique' }), ['squat', 'best view']],
    ['a criterion with one fault', input(file({ faults: sharedFaults.slice(1) })), ['squat', 'depth has 1 faults']],
    [
      'an own fault of a criterion not judged',
      one({ criteria: [{ id: 'depth', share: 1 }], judgedFrom: { side: ['depth'] }, faults: [fault('own', 'pauses')] }),
      ['fault own', '"pauses"'],
    ],
    ['another pattern than the file', one({ pattern: 'hinge' }), ['squat.json', '"hinge"']],
    [
      'an easier variant that nobody knows',
      one({ ladder: { ...ladder, easier: [{ exercise: 'box-squat', why: '' }] } }),
      ['ladder', '"box-squat"'],
    ],
    [
      'a better suited variant that nobody knows',
      one({ ladder: { ...ladder, betterSuited: [{ exercise: 'lunge', why: 'So.' }] } }),
      ['ladder', '"lunge"'],
    ],
    ['a caution that nobody knows', one({ cautions: ['heights'] }), ['cautions', '"heights"']],
    [
      'a target from more to less',
      one({ targets: { ...squat().targets, tempo: { ...tempo, growth: { ...tempo.growth, eccentricS: [3, 2] } } } }),
      ['growth eccentricS'],
    ],
    ['an omitted fault that the pattern has not', one({ omits: ['colour'] }), ['omits', '"colour"']],
    [
      'a tilt where there is no rail',
      one({ targets: { ...squat().targets, path: { shape: 'vertical', toleranceM: 0.05, railTiltDeg: 7 } } }),
      ['targets path', 'rail'],
    ],
    ['cautions that are no list', { ...input(file()), cautions: {} }, ['cautions']],
    ['a rubric that is none', { ...input(file()), rubric: null }, ['rubric']],
  ];

  it.each(cases)('is refused with the file and the place: %s', (_, wrong, words) => {
    let message = '';
    try {
      buildCatalogue(wrong);
    } catch (error) {
      message = error instanceof Error ? error.message : '';
    }
    for (const word of words) expect(message).toContain(word);
    expect(message).not.toBe('');
  });

  it('takes plain words in a ladder for what they are', () => {
    const words = {
      easier: [{ exercise: 'sit to a high chair', why: '' }],
      harder: [{ exercise: 'Squat with a pause', why: '' }],
      betterSuited: [],
    };
    expect(() => buildCatalogue(one({ ladder: words }))).not.toThrow();
  });

  it('takes an exercise of another file in a ladder', () => {
    const other = file({ exercises: [squat({ id: 'lunge' })] }, 'exercises/lunge.json');
    const first = file({ exercises: [squat({ ladder: { ...ladder, harder: [{ exercise: 'lunge', why: '' }] } })] });
    expect(() => buildCatalogue(input(first, other))).not.toThrow();
  });
});
