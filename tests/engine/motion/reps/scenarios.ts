import fc from 'fast-check';
import { type Lift, liftOf, minimumJerk, raisedCosine, type Way } from './lifts.ts';

/** A kind of lift as the height of what is followed shows it, in metres, of a lifter of 1.75 m. */
export type KindOfLift = {
  readonly name: string;
  readonly pattern: string;
  readonly beginsWith: 'eccentric' | 'concentric';
  /** From where a rep begins to where it turns. */
  readonly rangeM: number;
  /** Ends of a rep other than where it begins: a thruster begins at the shoulders and ends overhead. */
  readonly endsAtM?: number;
  readonly setUp: readonly Way[];
  readonly startsAtM: number;
  readonly putDown: readonly Way[];
};

const bob = (heightM: number): Way[] => [
  { toM: heightM, takesS: 0.35 },
  { toM: 0, takesS: 0.35 },
];
const rest = (takesS: number, atM = 0): Way => ({ toM: atM, takesS });

/** The bar out of the rack, two steps back; two steps forward and in again. */
const fromRack: Pick<KindOfLift, 'setUp' | 'startsAtM' | 'putDown'> = {
  startsAtM: -0.04,
  setUp: [rest(1, -0.04), { toM: 0.02, takesS: 0.6 }, ...bob(0.03), ...bob(0.04), { toM: 0, takesS: 0.4 }, rest(1)],
  putDown: [
    rest(0.6),
    ...bob(0.03),
    ...bob(0.04),
    { toM: 0.02, takesS: 0.5 },
    { toM: -0.04, takesS: 0.5 },
    rest(1, -0.04),
  ],
};
const fromLevel = (levelM: number, takesS: number): Pick<KindOfLift, 'setUp' | 'startsAtM' | 'putDown'> => ({
  startsAtM: levelM,
  setUp: [rest(1.2, levelM), { toM: 0, takesS }, rest(1)],
  putDown: [rest(0.7), { toM: levelM, takesS }, rest(1.5, levelM)],
});

export const kindsOfLift: readonly KindOfLift[] = [
  { name: 'squat', pattern: 'squat', beginsWith: 'eccentric', rangeM: -0.55, ...fromRack },
  { name: 'split squat', pattern: 'lunge', beginsWith: 'eccentric', rangeM: -0.32, ...fromRack },
  { name: 'bench press', pattern: 'horizontal press', beginsWith: 'eccentric', rangeM: -0.38, ...fromLevel(0.07, 0.7) },
  { name: 'push-up', pattern: 'horizontal press', beginsWith: 'eccentric', rangeM: -0.28, ...fromLevel(1.1, 1.6) },
  {
    name: 'deadlift',
    pattern: 'hinge',
    beginsWith: 'concentric',
    rangeM: 0.55,
    startsAtM: 0,
    setUp: [rest(1.5)],
    putDown: [rest(1.5)],
  },
  { name: 'press', pattern: 'vertical press', beginsWith: 'concentric', rangeM: 0.58, ...fromLevel(-1.1, 1.2) },
  { name: 'press from the rack', pattern: 'vertical press', beginsWith: 'concentric', rangeM: 0.58, ...fromRack },
  { name: 'pull-up', pattern: 'vertical pull', beginsWith: 'concentric', rangeM: 0.45, ...fromLevel(-0.3, 0.5) },
  { name: 'sit-up', pattern: 'trunk', beginsWith: 'concentric', rangeM: 0.6, ...fromLevel(1.2, 2) },
  {
    name: 'thruster',
    pattern: 'olympic lift',
    beginsWith: 'eccentric',
    rangeM: -0.5,
    endsAtM: 0.6,
    ...fromLevel(-1.2, 1),
  },
];

export type Scenario = {
  readonly kind: KindOfLift;
  readonly lift: Lift;
  /** When each rep that counts begins, turns and ends; end null where the clip ends before. */
  readonly reps: readonly { readonly startS: number; readonly turnS: number; readonly endS: number | null }[];
  readonly failed: number;
  readonly fromS: number;
  readonly toS: number;
  readonly framesPerSecond: number;
  readonly noiseM: number;
  readonly seed: number;
};

export type Wanted = {
  readonly count: number;
  readonly outS: number;
  readonly pauseS: number;
  readonly backS: number;
  readonly restS: number;
  /** Each rep covers this share less than the one before. */
  readonly fade: number;
  readonly firstShare: number;
  readonly failed: 'none' | 'sinksBack';
  readonly setUp: boolean;
  readonly putDown: boolean;
  /** Share of the first rep before the clip, and of the last one after it. */
  readonly cutStart: number | null;
  readonly cutEnd: number | null;
  readonly framesPerSecond: number;
  readonly noiseM: number;
  readonly sharp: boolean;
  readonly longRest: boolean;
  readonly seed: number;
};

/** The lift of a scenario, with what a person would count of it. */
export function scenarioOf(kind: KindOfLift, wanted: Wanted): Scenario {
  const shape = wanted.sharp ? raisedCosine : minimumJerk;
  const ways: Way[] = [...(wanted.setUp ? kind.setUp : [rest(0.8)])];
  const parts: { readonly first: number; readonly turnAfter: number; readonly last: number }[] = [];
  const ends = kind.endsAtM ?? 0;
  for (let rep = 0; rep < wanted.count; rep += 1) {
    const share = (rep === 0 ? wanted.firstShare : 1) * (1 - wanted.fade * rep);
    const far = kind.rangeM * share;
    const first = ways.length;
    ways.push({ toM: far, takesS: wanted.outS, shape }, rest(wanted.pauseS, far), {
      toM: ends,
      takesS: wanted.backS,
      shape,
    });
    parts.push({ first, turnAfter: first, last: first + 2 });
    const restS = wanted.longRest && rep === 0 ? 9 : wanted.restS;
    if (ends !== 0) ways.push(rest(0.3, ends), { toM: 0, takesS: 0.7, shape });
    ways.push(rest(restS));
  }
  if (wanted.failed === 'sinksBack') {
    const far = kind.rangeM;
    if (kind.beginsWith === 'eccentric') {
      ways.push(
        { toM: far, takesS: wanted.outS },
        { toM: 0.6 * far, takesS: 1 },
        { toM: 1.02 * far, takesS: 0.9 },
        rest(2, 1.02 * far),
      );
    } else ways.push({ toM: 0.45 * far, takesS: 1 }, rest(0.4, 0.45 * far), { toM: 0, takesS: 0.8 }, rest(1));
  } else if (wanted.putDown) ways.push(...kind.putDown);
  else ways.push(rest(0.8));
  const lift = liftOf(wanted.setUp ? kind.startsAtM : 0, ways);
  const span = (way: number) => lift.spans[way] ?? { startS: 0, endS: 0 };
  const whole = parts.map(({ first, turnAfter, last }) => ({
    startS: span(first).startS,
    turnS: span(turnAfter).endS,
    backS: span(last).startS,
    endS: span(last).endS,
  }));
  const [head, tail] = [whole[0], whole.at(-1)];
  const cutIn = (rep: (typeof whole)[number], share: number) => rep.startS + share * (rep.endS - rep.startS);
  const fromS = wanted.cutStart !== null && head ? cutIn(head, wanted.cutStart) : 0;
  const toS = wanted.cutEnd !== null && tail && wanted.failed === 'none' ? cutIn(tail, wanted.cutEnd) : lift.endS;
  const counts = whole.filter(
    ({ startS, turnS, backS, endS }) =>
      startS >= fromS &&
      (kind.beginsWith === 'eccentric' ? endS <= toS + 1e-9 : turnS <= toS && (backS >= turnS || endS <= toS)),
  );
  return {
    kind,
    lift,
    reps: counts.map(({ startS, turnS, endS }) => ({ startS, turnS, endS: endS <= toS + 1e-9 ? endS : null })),
    failed: wanted.failed === 'none' ? 0 : 1,
    fromS,
    toS,
    framesPerSecond: wanted.framesPerSecond,
    noiseM: wanted.noiseM,
    seed: wanted.seed,
  };
}

const seconds = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any set as people film them. */
export const anyWanted: fc.Arbitrary<Wanted> = fc.record({
  count: fc.integer({ min: 1, max: 8 }),
  outS: seconds(0.5, 3),
  pauseS: fc.oneof(fc.constant(0), seconds(0.1, 1.5)),
  backS: seconds(0.5, 2.5),
  restS: fc.oneof(fc.constant(0.05), seconds(0.2, 3)),
  fade: fc.oneof(fc.constant(0), seconds(0, 0.03)),
  firstShare: fc.oneof(fc.constant(1), seconds(0.8, 1.1)),
  failed: fc.constantFrom('none', 'none', 'none', 'sinksBack'),
  setUp: fc.boolean(),
  putDown: fc.boolean(),
  cutStart: fc.constant(null),
  cutEnd: fc.constant(null),
  framesPerSecond: fc.constantFrom(5, 10, 15, 24, 30, 60),
  noiseM: fc.constantFrom(0, 0.001, 0.005, 0.01),
  sharp: fc.boolean(),
  longRest: fc.boolean(),
  seed: fc.integer({ min: 1, max: 1000 }),
});
