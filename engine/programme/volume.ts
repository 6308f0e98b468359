import type { Goal } from '../exercises/exercise.ts';
import type { Review } from '../review/review.ts';
import type { Severity } from '../rubric/rubric.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, type Lift, namesOf } from './lift.ts';
import { primeMover, sharePrimeMover } from './primeMovers.ts';

/** What an indirect set counts for (Pelland et al. 2025, Sports Med: fractional counting fitted best). */
export const indirectShare = 0.5;

/** Two exercises of two hard sets need no remark. */
const neverTooMany = 4;

/** From how many hard sets on a session is much for one muscle: shared by exercises, in one exercise, far too much. */
type Limits = {
  readonly shared: number;
  readonly alone: number;
  readonly adjust: number;
  readonly correct: number;
};

/** Common practice, no source. For strength, sets are heavier and fewer near failure, so only a great many are too many. */
function limitsOf({ goal, experience }: Review['trainee']): Limits | null {
  const byGoal: Record<Goal, Limits | null> = {
    growth: { shared: experience === 'new' ? 6 : 8, alone: experience === 'new' ? 8 : 10, adjust: 12.5, correct: 16 },
    strength: { shared: 16, alone: 16, adjust: 20, correct: Number.POSITIVE_INFINITY },
    skill: null,
  };
  return byGoal[goal];
}

/** A lift with the hard sets that earlier advice has left it. */
type Load = Lift & { readonly left: number };

/** Lifts that share a muscle as their prime mover, and what the others give it. */
type Group = { readonly muscle: string; readonly own: readonly Load[]; readonly byOthers: number };

const setsOf = (loads: readonly Load[]): number => loads.reduce((sum, { left }) => sum + left, 0);
const totalOf = ({ own, byOthers }: Group): number => setsOf(own) + byOthers;

function groupOf(muscle: string, loads: readonly Load[]): Group {
  const direct = loads.filter(({ exercise, left }) => left > 0 && exercise.muscles.direct.includes(muscle));
  const shares = (one: Load): boolean =>
    primeMover(one.exercise) === muscle ||
    direct.some((other) => other.exercise !== one.exercise && sharePrimeMover(one.exercise, other.exercise));
  const own = direct.filter(shares);
  const others = loads.filter(
    (one) => !own.includes(one) && [...one.exercise.muscles.direct, ...one.exercise.muscles.indirect].includes(muscle),
  );
  return { muscle, own, byOthers: indirectShare * setsOf(others) };
}

const exercisesOf = ({ own }: Group): number => new Set(own.map(({ exercise }) => exercise.id)).size;

const isTooMuch = (group: Group, limits: Limits): boolean =>
  exercisesOf(group) === 1
    ? setsOf(group.own) >= limits.alone
    : setsOf(group.own) > neverTooMany && totalOf(group) >= limits.shared;

/** Half of each lift's hard sets, two at least; then fewer, and the last lifts left out, until they are few enough. */
function halved({ own, byOthers }: Group, limit: number): readonly number[] {
  const to = own.map(({ left }) => Math.min(left, Math.max(2, Math.ceil(left / 2))));
  const sum = (): number => to.reduce((all, one) => all + one, 0);
  while (sum() > neverTooMany && sum() + byOthers >= limit) {
    const long = to.findLastIndex((one) => one > 2);
    const last = long >= 0 ? long : to.findLastIndex((one) => one > 0);
    to[last] = long >= 0 ? (to[last] ?? 0) - 1 : 0;
  }
  return to;
}

function severityOf(sets: number, { adjust, correct }: Limits): Severity {
  if (sets >= correct) return 'correct';
  return sets >= adjust ? 'adjust' : 'prefer';
}

function findingOf(group: Group, muscles: readonly string[], to: readonly number[], limits: Limits): ProgrammeFinding {
  const total = totalOf(group);
  const changes = group.own.map((load, at) => ({ load, from: load.left, to: to[at] ?? load.left }));
  const fewer = changes.filter((one) => one.to > 0 && one.to < one.from);
  const out = changes.filter((one) => one.to === 0).map(({ load }) => load);
  const values = {
    muscles,
    sets: total,
    helped: group.byOthers > 0 ? 'yes' : 'no',
    addsBack: 'yes',
    exercises: namesOf(group.own),
    names: fewer.map(({ load }) => load.exercise.name),
    from: fewer.map((one) => one.from),
    to: fewer.map((one) => one.to),
    fewer: fewer.length,
    leftOut: namesOf(out),
    out: out.length,
  };
  return {
    id: `volume-${group.muscle.replaceAll(' ', '-')}`,
    kind: 'volume',
    severity: severityOf(total, limits),
    restsOn: 'plan',
    entryIds: idsOf(group.own),
    message: { id: exercisesOf(group) === 1 ? 'volumeOfOne' : 'volume', values },
    advice: {
      kind: 'sets',
      changes: changes
        .filter((one) => one.to !== one.from)
        .map(({ load, to: sets }) => ({ entryId: load.entry.id, to: sets })),
    },
  };
}

/**
 * Muscles with many hard sets in one session, once each: the lifts that share them as prime mover, counted whole, and the
 * others that train them, counted half. The advice on one muscle is taken as followed before the next is looked at, so that
 * no lift is halved twice; muscles that rest on the same lifts are named together. Holds are not counted.
 */
export function volumeFindings(lifts: readonly Lift[], trainee: Review['trainee']): ProgrammeFinding[] {
  const limits = limitsOf(trainee);
  if (limits === null) return [];
  const muscles = [...new Set(lifts.flatMap(({ exercise }) => primeMover(exercise) ?? []))];
  const findings: ProgrammeFinding[] = [];
  let loads: readonly Load[] = lifts
    .filter(({ exercise }) => exercise.beginsWith !== 'hold')
    .map((lift) => ({ ...lift, left: lift.hardCount }));
  for (;;) {
    const groups = muscles.map((muscle) => groupOf(muscle, loads)).filter((group) => isTooMuch(group, limits));
    const [most] = groups.toSorted((a, b) => totalOf(b) - totalOf(a));
    if (most === undefined) return findings;
    const same = groups.filter((group) => idsOf(group.own).join() === idsOf(most.own).join());
    const alone = exercisesOf(most) === 1;
    const to = halved(alone ? { ...most, byOthers: 0 } : most, alone ? limits.alone : limits.shared);
    findings.push(
      findingOf(
        most,
        same.map(({ muscle }) => muscle),
        to,
        limits,
      ),
    );
    loads = loads.map((load) => ({ ...load, left: to[most.own.indexOf(load)] ?? load.left }));
  }
}
