import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type IntraclassForm, intraclassCorrelation } from '../../../engine/agreement/intraclass.ts';
import { cohenKappa, fleissKappa, gwetAc1 } from '../../../engine/agreement/kappa.ts';
import { krippendorffAlpha } from '../../../engine/agreement/krippendorffAlpha.ts';
import { formsOf, known } from './intraclassForms.ts';

const forms = [
  ...(['oneWaySingle', 'twoWayRandomSingle', 'twoWayMixedSingle'] as const),
  ...(['oneWayMean', 'twoWayRandomMean', 'twoWayMixedMean'] as const),
];

/** Two to six moments, two to four judges, scores as flags leave them. */
const tables = fc.tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 2, max: 4 })).chain(([n, k]) =>
  fc.array(fc.array(fc.constantFrom(0, 40, 73.6, 80, 92, 100), { minLength: k, maxLength: k }), {
    minLength: n,
    maxLength: n,
  }),
);

const span = (form: IntraclassForm) =>
  form.kind === 'tooFewToTell' ? [] : [form.value, form.low ?? form.value, form.high ?? form.value];

describe('a small table of scores', () => {
  it('never gives a correlation, or a bound of one, that is infinite or outside -1 to 1', () => {
    fc.assert(
      fc.property(tables, (scores) => {
        const result = intraclassCorrelation(scores);
        if (result.kind !== 'estimated') return;
        for (const form of forms) {
          for (const value of span(result[form])) expect(value >= -1 && value <= 1).toBe(true);
          const [value = 0, low = 0, high = 0] = span(result[form]);
          expect(low <= value && value <= high).toBe(true);
        }
      }),
      { numRuns: 5000 },
    );
  });

  it('says that there is no spread just where each judge gave one score throughout', () => {
    fc.assert(
      fc.property(tables, (scores) => {
        const throughout = scores.every((row) => row.every((score, judge) => score === scores[0]?.[judge]));
        expect(intraclassCorrelation(scores).kind).toBe(throughout ? 'noSpread' : 'estimated');
      }),
      { numRuns: 2000 },
    );
  });

  it('gives the same whatever the order of moments and judges, and the unit and zero of the scale', () => {
    fc.assert(
      fc.property(tables, (scores) => {
        const other = scores.map((row) => row.map((score) => 3 * score + 7).reverse()).reverse();
        const [one, turned] = [intraclassCorrelation(scores), intraclassCorrelation(other)];
        expect(turned.kind).toBe(one.kind);
        if (one.kind !== 'estimated' || turned.kind !== 'estimated') return;
        for (const form of forms) {
          const [values, turnedValues] = [span(one[form]), span(turned[form])];
          expect(turnedValues.length).toBe(values.length);
          for (const [at, value] of values.entries()) expect(turnedValues[at]).toBeCloseTo(value, 6);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('of one moment is too small to tell', () => {
    expect(intraclassCorrelation([[80, 100]])).toEqual({ kind: 'tooFewToTell' });
  });

  it('of two moments that the judges score crosswise has no absolute agreement to tell: nothing is left to divide by', () => {
    // Targets 0, judges 0, error 400 in mean square: (0 - 400) / (0 + 400 + 2 (0 - 400) / 2) = -400 / 0.
    const crosswise = formsOf([
      [80, 100],
      [100, 80],
    ]);
    expect(crosswise.twoWayRandomSingle).toEqual({ kind: 'tooFewToTell' });
    expect(crosswise.oneWayMean).toEqual({ kind: 'tooFewToTell' });
    expect(known(crosswise.oneWaySingle).value).toBe(-1);
  });
});

describe('two judges 20 points apart throughout', () => {
  const scores = [
    [60, 40],
    [80, 60],
    [100, 80],
  ];

  it('are consistent and do not agree', () => {
    // Mean squares by hand: targets 800, judges 600, error 0, within 200.
    const { twoWayMixedSingle, twoWayRandomSingle, oneWaySingle, ...rest } = formsOf(scores);
    expect(known(twoWayMixedSingle).value).toBe(1);
    expect(known(twoWayRandomSingle).value).toBeCloseTo(800 / (800 + (2 * 600) / 3), 12);
    expect(known(oneWaySingle).value).toBeCloseTo((800 - 200) / (800 + 200), 12);
    expect(rest.standardErrorOfMeasurement).toBe(0);
    expect(rest.standardErrorOfAgreement).toBeCloseTo(Math.sqrt(600 / 3), 12);
  });

  it('have an interval of absolute agreement, and none of consistency, which nothing spoils', () => {
    const { twoWayMixedSingle, twoWayRandomSingle } = formsOf(scores);
    expect(known(twoWayMixedSingle)).toMatchObject({ low: null, high: null });
    // Only the judges' variance is left, with its one degree of freedom: F(0.975; 2, 1) = 799.50, F(0.975; 1, 2) = 38.51
    // (printed tables): 3 × 800 / (F × 2 × 600 + 3 × 800), and 3 F 800 / (2 × 600 + 3 F 800).
    expect(known(twoWayRandomSingle).low).toBeCloseTo(2400 / (799.5 * 1200 + 2400), 5);
    expect(known(twoWayRandomSingle).high).toBeCloseTo((2400 * 38.51) / (1200 + 2400 * 38.51), 4);
  });

  it('are told apart from judges who agree to the point, who have 1 in every form', () => {
    const same = formsOf([
      [60, 60],
      [80, 80],
    ]);
    for (const form of forms) expect(known(same[form]).value).toBe(1);
    expect(same.standardErrorOfAgreement).toBe(0);
  });
});

describe('a kappa', () => {
  const counts = fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 3, maxLength: 3 }), {
    minLength: 3,
    maxLength: 3,
  });

  it('is exactly 0 where agreement is just that of chance', () => {
    fc.assert(
      fc.property(
        fc.tuple(...Array.from({ length: 3 }, () => fc.integer({ min: 1, max: 30 }))),
        fc.tuple(...Array.from({ length: 3 }, () => fc.integer({ min: 1, max: 30 }))),
        (rows, columns) => {
          const byChance = rows.map((row) => columns.map((column) => row * column));
          for (const kind of ['plain', 'linear', 'quadratic'] as const) {
            expect(Object.is(cohenKappa(byChance, kind)?.value, 0)).toBe(true);
          }
        },
      ),
    );
  });

  it('is exactly 0.2 where it is by hand', () => {
    // Same 12 of 20, by chance 10 of 20: (0.6 - 0.5) / 0.5; and 24 of 40 likewise.
    expect(
      [6, 12].map(
        (n) =>
          cohenKappa([
            [n, (n * 2) / 3],
            [(n * 2) / 3, n],
          ])?.value,
      ),
    ).toEqual([0.2, 0.2]);
  });

  it('and every other figure of a small table lies within -1 and 1, or is told to be missing', () => {
    fc.assert(
      fc.property(counts, (table) => {
        const values = [
          ...(['plain', 'linear', 'quadratic'] as const).map((kind) => cohenKappa(table, kind)),
          gwetAc1(table),
        ].flatMap((estimate) =>
          estimate === null ? [] : [estimate.value, estimate.low ?? 0, estimate.high ?? 0, estimate.value],
        );
        for (const value of values) expect(value >= -1 && value <= 1).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  it("of many raters and Krippendorff's alpha are finite too, and at most 1", () => {
    fc.assert(
      fc.property(tables, (scores) => {
        const levels = [0, 40, 73.6, 80, 92, 100];
        const said = scores.map((row) => levels.map((level) => row.filter((score) => score === level).length));
        const judges = (scores[0] ?? []).map((_, judge) => scores.map((row) => row[judge] ?? null));
        const values = [
          fleissKappa(said)?.value,
          krippendorffAlpha(judges, 'ordinal'),
          krippendorffAlpha(judges, 'interval'),
        ].filter((value) => value !== null && value !== undefined);
        for (const value of values) expect(value >= -1 && value <= 1).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});
