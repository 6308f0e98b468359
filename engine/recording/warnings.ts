import * as v from 'valibot';

/** What a measure can warn of, each with the names of the numbers it gives. */
const numbersOf = {
  tooFewFrames: ['frames'],
  fewFramesPerSecond: ['framesPerSecond', 'seconds'],
  fromBody: [],
  aboutFromBody: ['percent'],
  lengthsFromBody: [],
  noScale: [],
  farOffAxis: ['degrees'],
  offAxis: ['degrees'],
  notFromSide: [],
  nothingUpright: [],
  facingUnknown: [],
  hold: [],
  noRep: [],
  unlikelyHeight: ['metres'],
  cameraMoves: [],
  noDisc: [],
  discLost: ['lost', 'frames'],
  discDoubtful: ['doubtful', 'frames'],
  noRimAtClick: ['frame'],
  pointLost: ['lost', 'frames'],
  nobodyAtClick: ['frame'],
  nobodySeen: [],
  seldomSeen: ['percent'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type WarningId = keyof typeof numbersOf;

const isWarningId = (id: string): id is WarningId => Object.hasOwn(numbersOf, id);

/** A warning that is known, with its own numbers and no others. */
export const warningSchema = v.pipe(
  v.strictObject({ id: v.pipe(v.string(), v.guard(isWarningId)), values: v.record(v.string(), v.number()) }),
  v.check(({ id, values }) => Object.keys(values).sort().join() === [...numbersOf[id]].sort().join()),
);

/** Something to know before reading the numbers, as data: what it says stands in `engine/wording`. */
export type Warning = Readonly<v.InferOutput<typeof warningSchema>>;

/** A warning with its numbers. */
export const warning = <Id extends WarningId>(
  id: Id,
  values: Readonly<Record<(typeof numbersOf)[Id][number], number>>,
): Warning => ({ id, values });
