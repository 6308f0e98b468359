/** Share of a way covered after a share of its time, both 0-1. */
export type Shape = (share: number) => number;

/** The smoothest way between two rests (minimum jerk: Flash & Hogan 1985). */
export const minimumJerk: Shape = (share) => share ** 3 * (10 + share * (6 * share - 15));

/** Half a cosine: it sets out and stops more sharply. */
export const raisedCosine: Shape = (share) => (1 - Math.cos(Math.PI * share)) / 2;

/**
 * A way whose speed has two equal humps and sinks to a share of their peak half-way between them: a sticking region. The
 * speed is that of minimum jerk over each half, lifted between the two peaks to that floor.
 */
export function twoHumps(floorShare: number): Shape {
  const hump = (share: number) => (share * (1 - share)) ** 2 * 16;
  const speed = (share: number) => {
    const half = hump((share * 2) % 1);
    return share > 0.25 && share < 0.75 ? Math.max(floorShare, half) : half;
  };
  return overall(speed);
}

/** The way of a speed that is known, by the trapezoid rule, scaled to end at 1. */
function overall(speed: Shape): Shape {
  const steps = 4000;
  const ways = [0];
  for (let step = 1; step <= steps; step += 1) {
    ways.push((ways[step - 1] ?? 0) + (speed((step - 1) / steps) + speed(step / steps)) / 2);
  }
  const whole = ways[steps] ?? 1;
  return (share) => {
    const place = Math.min(1, Math.max(0, share)) * steps;
    const below = Math.min(steps - 1, Math.floor(place));
    const lower = ways[below] ?? 0;
    return (lower + ((ways[below + 1] ?? lower) - lower) * (place - below)) / whole;
  };
}

/** One way to a height, or a rest where it is. */
export type Way = { readonly toM: number; readonly takesS: number; readonly shape?: Shape };

/** Height over time of ways one after the other, and when each begins and ends. */
export type Lift = {
  readonly heightAt: (timeS: number) => number;
  readonly spans: readonly { readonly startS: number; readonly endS: number }[];
  readonly endS: number;
};

export function liftOf(fromM: number, ways: readonly Way[]): Lift {
  let startS = 0;
  let from = fromM;
  const parts = ways.map(({ toM, takesS, shape = minimumJerk }) => {
    const part = { startS, endS: startS + takesS, fromM: from, toM, shape };
    startS += takesS;
    from = toM;
    return part;
  });
  const heightAt = (timeS: number) => {
    const part = parts.find(({ endS }) => timeS < endS);
    if (!part) return from;
    const share = Math.max(0, (timeS - part.startS) / (part.endS - part.startS));
    return part.fromM + (part.toM - part.fromM) * part.shape(share);
  };
  return { heightAt, spans: parts.map(({ startS: start, endS }) => ({ startS: start, endS })), endS: startS };
}

/** Durations of one rep in the order in which its parts come: first way, pause, second way, and the pause after it. */
export type RepPlan = {
  readonly firstS: number;
  readonly pauseS: number;
  readonly secondS: number;
  readonly restS: number;
  readonly rangeM?: number;
};

export type SetPlan = {
  readonly reps: readonly RepPlan[];
  /** Which way the first way goes: -1 = down. */
  readonly towards: 1 | -1;
  readonly shape?: Shape;
  readonly restBeforeS?: number;
};

/** A set between two rests, starting at height 0. Ways 1 + 4 × rep … are its parts; way 0 is the rest before. */
export function liftOfSet({ reps, towards, shape = minimumJerk, restBeforeS = 1 }: SetPlan): Lift {
  return liftOf(0, [
    { toM: 0, takesS: restBeforeS },
    ...reps.flatMap(({ firstS, pauseS, secondS, restS, rangeM = 0.55 }) => [
      { toM: towards * rangeM, takesS: firstS, shape },
      { toM: towards * rangeM, takesS: pauseS },
      { toM: 0, takesS: secondS, shape },
      { toM: 0, takesS: restS },
    ]),
  ]);
}

/** Even times from 0 to a lift's end. */
export function evenTimes(endS: number, framesPerSecond: number): number[] {
  return Array.from({ length: Math.floor(endS * framesPerSecond) + 1 }, (_, frame) => frame / framesPerSecond);
}

/** The n-th number of an evenly spread sequence in 0-1 (van der Corput), for plans that vary without chance. */
export function spread(index: number, base: 2 | 3 | 5 | 7): number {
  let share = 0;
  let part = 1 / base;
  for (let left = index; left > 0; left = Math.floor(left / base)) {
    share += part * (left % base);
    part /= base;
  }
  return share;
}

/** Reps of varied durations: every second one without a pause, `from` the first of the sequence. */
export function variedReps(count: number, from: number): RepPlan[] {
  return Array.from({ length: count }, (_, rep) => {
    const index = from + rep + 1;
    return {
      firstS: 0.8 + 2.2 * spread(index, 2),
      pauseS: index % 2 === 0 ? 0 : 0.2 + 1.3 * spread(index, 3),
      secondS: 0.6 + 1.4 * spread(index, 5),
      restS: 0.3 + spread(index, 7),
    };
  });
}
