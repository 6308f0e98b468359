import type { Exercise } from '../exercises/exercise.ts';

/** The muscle that does most of the work: the first of the direct ones. Undefined where the library names none. */
export const primeMover = ({ muscles }: Exercise): string | undefined => muscles.direct[0];

/**
 * Whether two exercises are work for the same prime mover: each one's is trained directly by the other. A squat and a
 * hinge both train the glutes and yet aren't; a bench press and an overhead press aren't either.
 */
export function sharePrimeMover(one: Exercise, other: Exercise): boolean {
  const [ofOne, ofOther] = [primeMover(one), primeMover(other)];
  if (ofOne === undefined || ofOther === undefined) return false;
  return other.muscles.direct.includes(ofOne) && one.muscles.direct.includes(ofOther);
}

/** The muscles that both exercises train directly. */
export const sharedMuscles = (one: Exercise, other: Exercise): string[] =>
  one.muscles.direct.filter((muscle) => other.muscles.direct.includes(muscle));
