import type { Exercise } from '../../exercises/exercise.ts';
import type { BodyCandidate } from './bodyCandidate.ts';

/** Whether the hands move between two frames as in a gesture, and not as in the lift. */
export type GestureCheck = (fromFrame: number, toFrame: number) => boolean;

/** Fewer frames that show hands and shoulders tell nothing. */
const leastFrames = 4;

/**
 * What shows a lift. `shouldersGo`: their way as a share of the hands'; in a pull from the floor it is most of it, in a gesture
 * none. `handsReach`: the hands' highest place above the shoulders, in heights; a press ends about a third above them, a clean
 * at them, a gesture below.
 */
const shownBy: Readonly<Record<string, { readonly shouldersGo: number | null; readonly handsReach: number | null }>> = {
  hinge: { shouldersGo: 0.4, handsReach: null },
  'vertical press': { shouldersGo: null, handsReach: 0.05 },
  'olympic lift': { shouldersGo: 0.4, handsReach: -0.08 },
};

/**
 * How hands that are followed tell a lift from a gesture: the shoulders move with them, or they get up to the shoulders. Null
 * for lifts that a gesture looks like, or where no shoulders or hands are seen.
 */
export function gestureCheck(
  hands: BodyCandidate,
  shoulders: BodyCandidate | null,
  { pattern, heightPx }: Pick<Exercise, 'pattern'> & { readonly heightPx: number },
): GestureCheck | null {
  const shown = shownBy[pattern];
  if (!shown || !shoulders || hands.part !== 'hands' || !hands.givesRange || !shoulders.givesRange) return null;
  return (fromFrame, toFrame) => {
    const both = hands.heightsPx.slice(fromFrame, toFrame + 1).flatMap((hand, index) => {
      const shoulder = shoulders.heightsPx[fromFrame + index] ?? null;
      return hand === null || shoulder === null ? [] : [{ hand, shoulder }];
    });
    if (both.length < leastFrames) return false;
    const moveWith = shown.shouldersGo !== null && shareOfWay(both) >= shown.shouldersGo;
    const reach = Math.max(...both.map(({ hand, shoulder }) => hand - shoulder)) / heightPx;
    return !(moveWith || (shown.handsReach !== null && reach >= shown.handsReach));
  };
}

type Heights = { readonly hand: number; readonly shoulder: number };

/** How far the shoulders go for each pixel that the hands go, by least squares, so that steps even out. */
function shareOfWay(both: readonly Heights[]): number {
  const mean = (of: (one: Heights) => number) => both.reduce((sum, one) => sum + of(one), 0) / both.length;
  const [hand, shoulder] = [mean((one) => one.hand), mean((one) => one.shoulder)];
  return (
    mean((one) => (one.hand - hand) * (one.shoulder - shoulder)) /
    Math.max(
      1e-6,
      mean((one) => (one.hand - hand) ** 2),
    )
  );
}
