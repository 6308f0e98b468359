import { describe, expect, it } from 'vitest';
import {
  cohenKappa,
  fleissKappa,
  gwetAc1,
  kappaBand,
  percentAgreement,
  shareInterval,
} from '../../engine/agreement/kappa.ts';
import { krippendorffAlpha } from '../../engine/agreement/krippendorffAlpha.ts';
import { formsOf, known } from '../engine/agreement/intraclassForms.ts';
import { fleiss1971 } from './fleiss1971.ts';

const rowsOf = (text: string) =>
  text
    .trim()
    .split(/\s*[|\n]\s*/)
    .map((row) => row.trim().split(/\s+/).map(Number));

describe("Cohen's kappa", () => {
  it('two by two, 0.400 (textbook table, from memory)', () => {
    expect(
      cohenKappa([
        [20, 5],
        [10, 15],
      ])?.value,
    ).toBeCloseTo(0.4, 9);
    expect(
      percentAgreement([
        [20, 5],
        [10, 15],
      ]),
    ).toBeCloseTo(0.7, 12);
  });

  it('two coaches flagging fifty reps: 0.55516 (worked by hand: po 0.80, pe 0.5504)', () => {
    expect(
      cohenKappa([
        [12, 4],
        [6, 28],
      ])?.value,
    ).toBeCloseTo((0.8 - 0.5504) / (1 - 0.5504), 9);
  });

  it('three by three, plain and linear-weighted with standard errors (statistics-package printout kept in the open test file of a general statistics library)', () => {
    const table = [
      [0, 4, 1],
      [0, 8, 0],
      [0, 1, 5],
    ];
    const plain = cohenKappa(table);
    const linear = cohenKappa(table, 'linear');
    expect(plain?.value).toBeCloseTo(0.4842, 4);
    expect(plain?.standardError).toBeCloseTo(0.138, 4);
    expect(linear?.value).toBeCloseTo(0.4701, 4);
    expect(linear?.standardError).toBeCloseTo(0.1457, 4);
    expect(cohenKappa(table, 'quadratic')?.value).toBeCloseTo(0.45016, 5);
  });

  it('kappa falls and AC1 holds when one category is rare (Feinstein & Cicchetti 1990, tables from memory)', () => {
    expect(
      cohenKappa([
        [40, 9],
        [6, 45],
      ])?.value,
    ).toBeCloseTo(0.6995, 4);
    expect(
      cohenKappa([
        [80, 10],
        [5, 5],
      ])?.value,
    ).toBeCloseTo(0.3182, 4);
    expect(
      gwetAc1([
        [40, 9],
        [6, 45],
      ])?.value,
    ).toBeCloseTo(0.7007, 4);
    expect(
      gwetAc1([
        [80, 10],
        [5, 5],
      ])?.value,
    ).toBeCloseTo(0.808, 4);
  });

  it('has no value when both raters put everything in one category', () => {
    expect(
      cohenKappa([
        [9, 0],
        [0, 0],
      ]),
    ).toBeNull();
  });
});

describe('The interval of a share', () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])(
    '%s of %s is %s to %s (Newcombe 1998, Statistics in Medicine 17:857, score method, from memory)',
    (of, n, low, high) => {
      const interval = shareInterval(of / n, n);
      expect(interval?.low).toBeCloseTo(low, 4);
      expect(interval?.high).toBeCloseTo(high, 4);
    },
  );

  it('has none without items', () => {
    expect(shareInterval(0, 0)).toBeNull();
  });
});

describe("Fleiss' kappa", () => {
  it('ten subjects by fourteen raters: 0.209931 (the well-known encyclopaedia teaching table, not the 1971 paper)', () => {
    const table = rowsOf(`0 0 0 0 14 | 0 2 6 4 2 | 0 0 3 5 6 | 0 3 9 2 0 | 2 2 8 1 1
      7 7 0 0 0 | 3 2 6 3 0 | 2 5 3 2 2 | 6 5 2 1 0 | 0 2 2 3 7`);
    expect(fleissKappa(table)?.value).toBeCloseTo(0.209931, 6);
  });

  it('thirty subjects by six raters: 0.430 and each category (Fleiss 1971, Psychological Bulletin 76:378)', () => {
    const result = fleissKappa(fleiss1971);
    expect(result?.value).toBeCloseTo(0.430245, 6);
    expect(result?.z).toBeCloseTo(17.65, 2);
    expect(result?.perCategory.map((value) => Number(value.toFixed(3)))).toEqual([0.245, 0.245, 0.52, 0.471, 0.566]);
  });
});

describe('Intraclass correlation', () => {
  const scores = rowsOf('9 2 5 8 | 6 1 3 2 | 8 4 6 8 | 7 1 2 6 | 10 5 6 9 | 6 2 4 7');

  it('six forms on six targets by four judges (Shrout & Fleiss 1979, Psychological Bulletin 86:420)', () => {
    const result = formsOf(scores);
    expect(known(result.oneWaySingle).value).toBeCloseTo(0.1657, 4);
    expect(known(result.twoWayRandomSingle).value).toBeCloseTo(0.2898, 4);
    expect(known(result.twoWayMixedSingle).value).toBeCloseTo(0.7148, 4);
    expect(known(result.oneWayMean).value).toBeCloseTo(0.4428, 4);
    expect(known(result.twoWayRandomMean).value).toBeCloseTo(0.6201, 4);
    expect(known(result.twoWayMixedMean).value).toBeCloseTo(0.9093, 4);
  });

  it('error of measurement and smallest detectable change (from the same mean squares, by hand)', () => {
    const result = formsOf(scores);
    expect(result.standardErrorOfMeasurement).toBeCloseTo(Math.sqrt(1.019444), 5);
    expect(result.minimalDetectableChange).toBeCloseTo(2.7987, 3);
    // Judges 32.486 in mean square, six targets: the error of agreement holds (32.486 - 1.019) / 6 more.
    expect(result.standardErrorOfAgreement).toBeCloseTo(Math.sqrt(1.019444 + (32.486111 - 1.019444) / 6), 5);
  });

  it('intervals of the same data as general statistics packages print them (from memory: -0.133 to 0.723, 0.019 to 0.761, 0.342 to 0.946)', () => {
    const result = formsOf(scores);
    expect(known(result.oneWaySingle).low).toBeCloseTo(-0.133, 3);
    expect(known(result.oneWaySingle).high).toBeCloseTo(0.723, 3);
    expect(known(result.twoWayRandomSingle).low).toBeCloseTo(0.019, 3);
    expect(known(result.twoWayRandomSingle).high).toBeCloseTo(0.761, 3);
    expect(known(result.twoWayMixedSingle).low).toBeCloseTo(0.342, 3);
    expect(known(result.twoWayMixedSingle).high).toBeCloseTo(0.946, 3);
  });
});

describe("Krippendorff's alpha", () => {
  const ratings = [
    '1 2 3 3 2 1 4 1 2 . . .',
    '1 2 3 3 2 2 4 1 2 5 . 3',
    '. 3 3 3 2 3 4 2 2 5 1 .',
    '1 2 3 3 2 4 4 1 2 5 1 .',
  ].map((row) => row.split(' ').map((cell) => (cell === '.' ? null : Number(cell))));

  it('four levels on four observers, twelve units, gaps (Krippendorff 2011, "Computing Krippendorff\'s Alpha-Reliability")', () => {
    expect(krippendorffAlpha(ratings, 'nominal')).toBeCloseTo(113 / 152, 9);
    expect(krippendorffAlpha(ratings, 'ordinal')).toBeCloseTo(0.815388, 6);
    expect(krippendorffAlpha(ratings, 'interval')).toBeCloseTo(0.849107, 6);
    expect(krippendorffAlpha(ratings, 'ratio')).toBeCloseTo(0.797403, 6);
  });
});

describe('Words for a kappa', () => {
  it.each([
    [-0.1, 'poor'],
    [-1e-16, 'slight'],
    [0, 'slight'],
    [0.2, 'slight'],
    [0.2 + 1e-16, 'slight'],
    [0.204, 'slight'],
    [0.21, 'fair'],
    [0.41, 'moderate'],
    [0.61, 'substantial'],
    [0.81, 'almost perfect'],
  ])('%s is %s (Landis & Koch 1977, Biometrics 33:159)', (kappa, band) => {
    expect(kappaBand(kappa)).toBe(band);
  });
});
