import { extent, mean } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { Result } from '../../electron/contract/requests.ts';
import { type LoadSpeedLine, loadAtSpeedKg, loadSpeedLine } from '../../engine/progress/loadSpeedLine.ts';
import { loadIn } from '../../engine/review/load.ts';

export type SetSpeed = Result<'trainees.speeds'>[number];

/** The sets of one session, and the line through them; null where they have one load, or got no slower with more. */
export type SessionSpeeds = {
  readonly sessionId: string;
  readonly date: string;
  readonly sets: readonly SetSpeed[];
  readonly line: LoadSpeedLine | null;
};

/** One exercise over the sessions, the oldest first. */
export type ExerciseSpeeds = { readonly exercise: string; readonly sessions: readonly SessionSpeeds[] };

/** Sets by exercise and session, in the order they come in. */
export function speedsByExercise(sets: readonly SetSpeed[]): readonly ExerciseSpeeds[] {
  return [...Map.groupBy(sets, ({ exercise }) => exercise)].map(([exercise, ofExercise]) => ({
    exercise,
    sessions: [...Map.groupBy(ofExercise, ({ sessionId }) => sessionId)].map(([sessionId, ofSession]) => ({
      sessionId,
      date: ofSession[0]?.date ?? '',
      sets: ofSession,
      line: loadSpeedLine(ofSession.map(({ loadKg, fastestMps }) => ({ loadKg, speedMps: fastestMps }))),
    })),
  }));
}

/** A load that the line of a session lets move at some speed. */
type LoadOnDay = { readonly date: string; readonly loadKg: number };

/**
 * The first and the last session's line compared at one speed: the mean of all measured, to a twentieth of a metre a
 * second. Null with fewer than two lines.
 */
export function progressAtSpeed({ sessions }: ExerciseSpeeds): {
  readonly speedMps: number;
  readonly first: LoadOnDay;
  readonly last: LoadOnDay;
} | null {
  const sets = sessions.flatMap((session) => session.sets);
  const speedMps = Math.round((mean(sets, ({ fastestMps }) => fastestMps) ?? 0) * 20) / 20;
  const loads = sessions.flatMap(({ date, line }) =>
    line === null ? [] : [{ date, loadKg: loadAtSpeedKg(line, speedMps) }],
  );
  const [first, last] = [loads[0], loads.at(-1)];
  return first === undefined || last === undefined || first === last ? null : { speedMps, first, last };
}

type ChartSize = { readonly width: number; readonly height: number; readonly units: 'kg' | 'lb' };

/** Where a load in the trainee's units and a speed lie in a chart: loads across, the fastest at the top. */
export function speedScales({ sessions }: ExerciseSpeeds, { width, height, units }: ChartSize) {
  const sets = sessions.flatMap((session) => session.sets);
  const [lightest = 0, heaviest = 0] = extent(sets, ({ loadKg }) => loadIn(units, loadKg));
  const fastest = Math.max(...sets.map(({ fastestMps }) => fastestMps));
  return {
    load: scaleLinear([lightest, heaviest], [0, width]).nice(4),
    speed: scaleLinear([0, fastest], [height, 0]).nice(4),
  };
}
