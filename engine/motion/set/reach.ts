import type { Exercise } from '../../exercises/exercise.ts';
import type { Measured, Reach } from '../measurement.ts';
import { type Curve, indexAt } from '../reps/curve.ts';
import type { EdgedRep } from '../reps/manualEdges.ts';
import { eccentricDirection } from '../reps/phases.ts';
import { isOfBody, type Tracked } from '../source/tracked.ts';
import { nineInTen } from './wander.ts';

/** What smoothing and reading a level leave uncertain, as a share of the range. */
const readingShare = 0.01;
/** A joint is put elsewhere by the network from rep to rep, in shares of the range. */
const bodyShare = 0.03;
/** Nine in ten of a smoothed position's errors lie within so many deviations of the raw one's noise. */
const noises = 1.2;

/**
 * How far each rep went towards its stretched and its shortened end, measured on the path itself, so that neither a scale nor the
 * other end comes into it. Where a rep's stretched end lies before it (a pull from the floor), that is where the rep begins.
 * Null for loads that don't go up and down.
 */
export function reachesOf(
  reps: readonly EdgedRep[],
  {
    exercise,
    up,
    noise,
    wander,
    follows,
  }: {
    readonly exercise: Exercise;
    readonly up: Curve;
    readonly noise: number;
    readonly wander: number;
    readonly follows: Tracked['follows'];
  },
): (Reach | null)[] {
  if (exercise.lowerEnd === 'neither') return reps.map(() => null);
  const towardStretched = eccentricDirection(exercise) === 'down' ? -1 : 1;
  const levels = reps.map((rep, index) => levelsOf(up, rep, { next: reps[index + 1], towardStretched }));
  const known = levels.filter((level) => level !== null);
  const range = Math.max(...known.map(({ stretched, shortened }) => stretched + shortened));
  if (known.length === 0 || !(range > 0)) return reps.map(() => null);
  const middle = known.reduce((sum, { stretched, shortened }) => sum + (stretched - shortened) / 2, 0) / known.length;
  const plusMinus = Math.hypot(
    readingShare,
    isOfBody(follows) ? bodyShare : 0,
    (noises * noise) / range,
    (nineInTen * wander) / range,
  );
  const share = (value: number): Measured => ({ value: value / range, plusMinus });
  return levels.map(
    (level) => level && { stretched: share(level.stretched - middle), shortened: share(level.shortened + middle) },
  );
}

type Levels = { readonly stretched: number; readonly shortened: number };

/** The furthest that a rep's path goes to either end, in the curve's unit, each counted towards that end. */
function levelsOf(
  curve: Curve,
  { moves: { eccentric, concentric, beginsWith, lastSeenS } }: EdgedRep,
  { next, towardStretched }: { readonly next: EdgedRep | undefined; readonly towardStretched: 1 | -1 },
): Levels | null {
  const furthest = (fromS: number, toS: number, sense: 1 | -1): number | null => {
    const values = curve.values
      .slice(indexAt(curve, fromS), indexAt(curve, Math.max(fromS, toS)) + 1)
      .filter((value) => value !== null);
    return values.length === 0 ? null : Math.max(...values.map((value) => sense * value));
  };
  const away: 1 | -1 = towardStretched === 1 ? -1 : 1;
  const finish =
    beginsWith === 'concentric'
      ? (eccentric?.startS ?? lastSeenS ?? concentric.endS)
      : (next?.moves.eccentric?.startS ?? concentric.endS);
  const stretched =
    beginsWith === 'eccentric' && eccentric
      ? furthest(eccentric.endS, concentric.startS, towardStretched)
      : furthest(concentric.startS, concentric.startS, towardStretched);
  const shortened = furthest(concentric.endS, finish, away);
  return stretched === null || shortened === null ? null : { stretched, shortened };
}
