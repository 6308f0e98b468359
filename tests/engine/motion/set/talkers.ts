import type { Body } from '../../../../engine/recording/recording.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';
import { drawnBody } from '../source/drawnLifter.ts';

/** What somebody does who lifts nothing; a body is 1000 px tall, so a pixel is about 1.7 mm. */
export type Doing = {
  /** Height of a gesture of the hands in pixels, 0 = the arms hang. */
  readonly gesturePx: number;
  /** Both hands go up together, or each by itself. */
  readonly hands: 'together' | 'apart';
  /** Walks to and fro, stepping twice a second. */
  readonly walks: boolean;
  readonly seed: number;
};

/** Numbers between 0 and 1, the same for the same seed. */
function sharesOf(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** Minimum jerk (Flash & Hogan 1985). */
const smooth = (share: number): number => {
  const t = Math.min(1, Math.max(0, share));
  return t ** 3 * (10 - 15 * t + 6 * t ** 2);
};

type Gesture = {
  readonly fromS: number;
  readonly upS: number;
  readonly heldS: number;
  readonly downS: number;
  readonly px: number;
};

/** Gestures one after the other as somebody makes them who talks: of other heights and lengths, with pauses. */
function gesturesOf(
  share: () => number,
  { gesturePx, untilS }: { readonly gesturePx: number; readonly untilS: number },
): Gesture[] {
  const gestures: Gesture[] = [];
  let atS = 0.4 + share();
  while (atS < untilS) {
    const one = {
      fromS: atS,
      upS: 0.3 + 0.5 * share(),
      heldS: 1.2 * share() ** 2,
      downS: 0.3 + 0.6 * share(),
      px: gesturePx * (0.6 + 0.8 * share()),
    };
    gestures.push(one);
    atS += one.upS + one.heldS + one.downS + 1.5 * share();
  }
  return gestures;
}

const heightAt = (gestures: readonly Gesture[], timeS: number): number =>
  gestures.reduce(
    (sum, { fromS, upS, heldS, downS, px }) =>
      sum + px * (smooth((timeS - fromS) / upS) - smooth((timeS - fromS - upS - heldS) / downS)),
    0,
  );

/** Sway of a standing body: a few slow waves whose frequencies and phases are the seed's. */
function swayOf(share: () => number, sizePx: number): (timeS: number) => number {
  const waves = [0.15, 0.3, 0.5, 0.9].map((hz) => ({ hz: hz * (0.7 + 0.6 * share()), phase: 2 * Math.PI * share() }));
  return (timeS) =>
    (sizePx / 2) *
    waves.reduce((sum, { hz, phase }, index) => sum + Math.sin(2 * Math.PI * hz * timeS + phase) / (index + 1), 0);
}

/**
 * The bodies of somebody who talks and walks about, at the given moments, with 4 px of noise on each joint. A step lifts the
 * body by about 5 cm (common knowledge of gait, from memory).
 */
export function talkingBodies(timesS: readonly number[], { gesturePx, hands, walks, seed }: Doing): Body[] {
  const share = sharesOf(seed);
  const untilS = timesS.at(-1) ?? 0;
  const own = (): ((timeS: number) => number) => {
    const gestures = gesturesOf(share, { gesturePx, untilS });
    return (timeS) => heightAt(gestures, timeS);
  };
  const left = own();
  const right = hands === 'together' ? left : own();
  const [down, side] = [swayOf(share, 10), swayOf(share, walks ? 150 : 15)];
  const stepHz = 1.7 + 0.4 * share();
  const stepPhase = 2 * Math.PI * share();
  const noise = whiteNoise(timesS.length * 34, seed);
  return timesS.map((timeS, frame) => {
    const step = 2 * Math.PI * stepHz * timeS + stepPhase;
    const stepsPx = walks ? 15 * Math.cos(step) : 0;
    const [x, y] = [side(timeS), down(timeS) + stepsPx];
    const lift = walks ? 30 * Math.sin(step / 2) : 0;
    const at = (px: number): readonly [number, number] => [x, y + px];
    const body = drawnBody({
      ...{ nose: at(0), eye: at(0), ear: at(0), shoulder: at(0), hip: at(0), knee: at(0), ankle: [x, 0] },
      elbow: at(0),
      wrist: at(0),
    });
    return body.map((joint, index) => {
      const isLeft = index % 2 === 1;
      const handPx = (isLeft ? left : right)(timeS);
      const raisedPx = index === 9 || index === 10 ? handPx : index === 7 || index === 8 ? 0.35 * handPx : 0;
      const stepPx = index >= 15 ? Math.max(0, isLeft ? lift : -lift) : 0;
      return {
        xPx: joint.xPx + 4 * (noise[34 * frame + 2 * index] ?? 0),
        yPx: joint.yPx - raisedPx - stepPx + 4 * (noise[34 * frame + 2 * index + 1] ?? 0),
        confidence: joint.confidence,
      };
    });
  });
}
