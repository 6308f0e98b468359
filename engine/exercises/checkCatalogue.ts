import type { Catalogue } from './catalogue.ts';
import type { Exercise, ExerciseFile, Fault } from './exercise.ts';

const fewestFaults = 2;
const shareTolerance = 1e-9;
/** Ladders name an exercise of the library by id; anything that isn't shaped like an id is plain text. */
const idShape = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

const repeated = (ids: readonly string[]): string | undefined => ids.find((id, at) => ids.indexOf(id) !== at);

const stop = (place: string, what: string): never => {
  throw new Error(`${place}: ${what}`);
};

const checkUnique = (place: string, ids: readonly string[]): void => {
  const twice = repeated(ids);
  if (twice !== undefined) stop(place, `"${twice}" appears twice`);
};

const checkKnown = (place: string, ids: readonly string[], known: ReadonlySet<string>, where: string): void => {
  for (const id of ids) if (!known.has(id)) stop(place, `"${id}" is not in ${where}`);
};

const checkFaults = (place: string, faults: readonly Fault[], criteria: ReadonlySet<string>, where: string): void => {
  checkUnique(
    `${place}, faults`,
    faults.map((fault) => fault.id),
  );
  for (const fault of faults) checkKnown(`${place}, fault ${fault.id}`, [fault.criterion], criteria, where);
};

const checkCriteria = (place: string, exercise: Exercise, rubricCriteria: ReadonlySet<string>): void => {
  const ids = exercise.criteria.map((criterion) => criterion.id);
  checkUnique(`${place}, criteria`, ids);
  checkKnown(`${place}, criteria`, ids, rubricCriteria, 'the rubric');
  const total = exercise.criteria.reduce((sum, criterion) => sum + criterion.share, 0);
  if (Math.abs(total - 1) > shareTolerance) stop(`${place}, criteria`, `the shares add up to ${total}, not to 1`);
  for (const { id, share } of exercise.criteria) {
    if (share < 0) stop(`${place}, criteria`, `more is taken from ${id} than it has`);
  }
  const own = new Set(ids);
  for (const [view, judged] of Object.entries(exercise.judgedFrom)) {
    checkKnown(`${place}, judgedFrom ${view}`, judged, own, "the exercise's criteria");
  }
  if (!exercise.judgedFrom[exercise.bestView]?.length) stop(`${place}, judgedFrom`, 'the best view judges nothing');
  for (const id of ids) {
    const count = exercise.faults.filter((fault) => fault.criterion === id).length;
    if (count < fewestFaults) stop(`${place}, faults`, `${id} has ${count} faults, it needs ${fewestFaults}`);
  }
};

const checkLadder = (place: string, exercise: Exercise, exerciseIds: ReadonlySet<string>): void => {
  const { easier, harder, betterSuited } = exercise.ladder;
  const fuller = exercise.rangeCut?.fuller ?? [];
  const named = [...[...easier, ...harder, ...betterSuited].map(({ exercise: id }) => id), fuller].flat();
  checkKnown(
    `${place}, ladder`,
    named.filter((name) => idShape.test(name)),
    exerciseIds,
    'the exercise library',
  );
};

const checkPath = (place: string, { path }: Exercise['targets']): void => {
  if (path.railTiltDeg === undefined || path.shape === 'rail') return;
  stop(`${place}, targets path`, 'only a rail has a tilt');
};

const checkTempo = (place: string, exercise: Exercise): void => {
  for (const [goal, target] of Object.entries(exercise.targets.tempo)) {
    for (const [phase, range] of Object.entries(target)) {
      if (range !== null && range[0] > range[1]) stop(`${place}, targets tempo ${goal} ${phase}`, 'from is over to');
    }
  }
};

/**
 * Checks what the schemas can't: that ids are unique, shares add up, every criterion has faults to pick from, and
 * every reference resolves. Throws an Error naming the file and the place.
 */
export const checkCatalogue = (
  catalogue: Catalogue,
  files: readonly { readonly name: string; readonly data: ExerciseFile }[],
  common: readonly Fault[] = [],
): void => {
  const criteria = new Set(catalogue.rubric.criteria.map((criterion) => criterion.id));
  const exercises = new Map(catalogue.exercises.map((exercise) => [exercise.id, exercise]));
  const exerciseIds = new Set(exercises.keys());
  const cautionIds = new Set(catalogue.cautions.map((caution) => caution.id));
  checkUnique(
    'rubric, criteria',
    catalogue.rubric.criteria.map((criterion) => criterion.id),
  );
  checkKnown(
    'rubric, partOf',
    catalogue.rubric.criteria.flatMap((criterion) => criterion.partOf ?? []),
    criteria,
    'the rubric',
  );
  checkUnique(
    'cautions',
    catalogue.cautions.map((caution) => caution.id),
  );
  checkUnique(
    'exercises',
    catalogue.exercises.map((exercise) => exercise.id),
  );
  for (const { name, data } of files) {
    checkFaults(name, data.faults, criteria, 'the rubric');
    const shared = new Set([...data.faults, ...common].map((fault) => fault.id));
    for (const written of data.exercises) {
      const place = `${name}, ${written.id}`;
      if (written.pattern !== data.pattern) stop(place, `its pattern is "${written.pattern}", not the file's`);
      const judged = new Set(written.criteria.map((criterion) => criterion.id));
      checkFaults(place, written.faults, judged, "the exercise's criteria");
      const named = (written.alsoJudged ?? []).flatMap((one) => [one.takenFrom ?? [], one.partOf ?? []].flat());
      checkKnown(`${place}, alsoJudged`, named, judged, "the exercise's criteria");
      const exercise = exercises.get(written.id);
      if (exercise === undefined) continue;
      checkCriteria(place, exercise, criteria);
      checkLadder(place, exercise, exerciseIds);
      checkTempo(place, exercise);
      checkPath(place, exercise.targets);
      checkKnown(`${place}, omits`, exercise.omits ?? [], shared, "the pattern's or the common faults");
      const hazards = exercise.faults.flatMap((fault) => fault.caution ?? []);
      checkKnown(`${place}, cautions`, [...exercise.cautions, ...hazards], cautionIds, 'the cautions');
    }
  }
};
