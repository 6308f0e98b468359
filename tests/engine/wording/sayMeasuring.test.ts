import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { warning } from '../../../engine/recording/warnings.ts';
import { measuring as english } from '../../../engine/wording/english/measuring.ts';
import { warningsForCoach } from '../../../engine/wording/english/measuringForCoach.ts';
import { measuring as german } from '../../../engine/wording/german/measuring.ts';
import {
  sayMeasuring,
  sayStoredMeasuring,
  sayUnseenToCoach,
  sayWarningToCoach,
} from '../../../engine/wording/sayMeasuring.ts';

type Elements = ReturnType<IntlMessageFormat['getAst']>;

/** The names of the values that a pattern needs, also within its choices. */
function namesIn(pattern: string): string[] {
  const namesOf = (elements: Elements): string[] =>
    elements.flatMap((element) => {
      if ('options' in element) {
        return [element.value, ...Object.values(element.options).flatMap(({ value }) => namesOf(value))];
      }
      return element.type === literal || !('value' in element) ? [] : [element.value];
    });
  return [...new Set(namesOf(new IntlMessageFormat(pattern, 'en', undefined, { ignoreTag: true }).getAst()))].sort();
}
/** The kind of a pattern's plain words, as the parser numbers it. */
const literal = 0;

const ids = Object.keys(english).filter((id): id is keyof typeof english => id in english);
const warnings = Object.keys(warningsForCoach).filter((id): id is keyof typeof warningsForCoach => id in english);

describe('what measures say', () => {
  it.each(ids)('needs the same values in both languages: %s', (id) => {
    expect(namesIn(german[id])).toEqual(namesIn(english[id]));
  });

  it.each(warnings)('tells the trainee of nothing to click on: %s', (id) => {
    expect(english[id]).not.toMatch(/click|draw a/);
    expect(german[id]).not.toMatch(/\bthe\b|\bclick/);
    expect(namesIn(warningsForCoach[id])).toEqual(namesIn(english[id]));
  });

  it('sets numbers in as each language writes them', () => {
    const tall = warning('unlikelyHeight', { metres: 2.5 });
    expect(sayMeasuring(tall, 'en')).toBe('The scale is doubtful: it would make you 2.5 m tall.');
    expect(sayMeasuring(tall, 'de')).toBe('Der Maßstab ist fraglich: Danach wärst du 2,5 m groß.');
    expect(sayWarningToCoach(tall, 'en')).toMatch(/body height would come to 2\.5 m; check/);
    expect(sayWarningToCoach(tall, 'de')).toMatch(/Körpergröße von 2,5 m heraus; prüf/);
    const slow = warning('fewFramesPerSecond', { framesPerSecond: 10, seconds: 0.1 });
    expect(sayWarningToCoach(slow, 'en')).toMatch(/about 10 frames a second.*0\.10 s/);
  });

  it('tells of a clicked point that was lost in the language of the sheet', () => {
    expect(sayMeasuring(warning('pointLost', { lost: 30, frames: 120 }), 'de')).toBe(
      'Der verfolgte Punkt ist in 30 von 120 Bildern nicht zu erkennen.',
    );
  });
});

describe('a suggestion', () => {
  const values = {
    rep: 2,
    verb: 'lowers',
    value: 1.2,
    within: 0.1,
    asked: 'targetBetween',
    askedFromS: 2,
    askedToS: 3,
  };
  const quick = (alsoReps: number[]) =>
    ({ id: 'eccentricTime', values: { ...values, alsoCount: alsoReps.length, alsoReps } }) as const;

  it('says what the rep does and what is asked', () => {
    expect(sayMeasuring(quick([]), 'en')).toBe('Rep 2 lowers in 1.2 s ± 0.1 s; the target is 2 to 3 s.');
    expect(sayMeasuring(quick([]), 'de')).toBe('Wiederholung 2: Absenken in 1,2 s ± 0,1 s; Vorgabe: 2 bis 3 s.');
  });

  it('names the other reps, three in a row and more in short', () => {
    expect(sayMeasuring(quick([1]), 'en')).toMatch(/s\. Rep 1 shows it too\.$/);
    expect(sayMeasuring(quick([1, 3, 4, 5, 7]), 'en')).toMatch(/Reps 1, 3 to 5 and 7 show it too\.$/);
    expect(sayMeasuring(quick([1, 3, 4, 5, 7]), 'de')).toMatch(
      /Die Wiederholungen 1, 3 bis 5 und 7 zeigen das auch\.$/,
    );
  });
});

describe('praise', () => {
  const depth = { reps: 1, least: 5, within: 2 };
  const head = { reps: 3, most: 10, within: 10, limit: 20 };
  it.each([
    [
      { id: 'everyDepth', values: depth },
      'The rep brings the hip crease below the top of the knee, by 5 cm ± 2 cm.',
      'Die Wiederholung bringt die Hüftfalte 5 cm ± 2 cm unter die Oberkante des Knies.',
    ],
    [
      { id: 'everyDepth', values: { ...depth, reps: 3, about: 'yes' } },
      'Every rep brings the hip crease below the top of the knee, by at least about 5 cm ± 2 cm.',
      'Jede Wiederholung bringt die Hüftfalte mindestens etwa 5 cm ± 2 cm unter die Oberkante des Knies.',
    ],
    [
      { id: 'everyHead', values: head },
      'Every rep keeps the head within 10° ± 10° of its place against the trunk; up to 20° is fine.',
      'Jede Wiederholung: Der Kopf ändert seinen Winkel zum Rumpf um höchstens 10° ± 10°; bis 20° ist in Ordnung.',
    ],
    [
      { id: 'everyHead', values: { reps: 3, limit: 20 } },
      'Every rep keeps the head within 20° of its place against the trunk.',
      'Jede Wiederholung: Der Kopf ändert seinen Winkel zum Rumpf um höchstens 20°.',
    ],
    [
      { id: 'everyDepth', values: { reps: 3, within: 2 } },
      'Every rep brings the hip crease below the top of the knee.',
      'Jede Wiederholung bringt die Hüftfalte unter die Oberkante des Knies.',
    ],
  ] as const)('tells its number and ±, where it was kept with them: %j', (message, en, de) => {
    expect(sayMeasuring(message, 'en')).toBe(en);
    expect(sayMeasuring(message, 'de')).toBe(de);
  });
});

it('leaves alone a stored message that is none of measuring', () => {
  expect(sayStoredMeasuring({ id: 'somethingNewer', values: {} }, 'de')).toBeNull();
  expect(sayStoredMeasuring({ id: 'toString', values: {} }, 'de')).toBeNull();
});

it('tells the coach which joint hides what', () => {
  expect(sayUnseenToCoach({ part: 'ankle', why: 'unclear', lost: ['knee'] }, 'en')).toBe(
    'The ankle can’t be made out, so the knee angle can’t be measured.',
  );
  const hip = { part: 'hip', why: 'behindDisc', lost: ['knee', 'hip', 'trunkLean'] } as const;
  expect(sayUnseenToCoach(hip, 'en')).toBe(
    'The hip is behind the disc, so the knee angle, the hip angle and trunk lean can’t be measured.',
  );
  expect(sayUnseenToCoach(hip, 'de')).toBe(
    'Die Hüfte ist hinter der Scheibe; nicht messbar: der Kniewinkel, der Hüftwinkel und die Vorneigung.',
  );
});
