import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../engine/grading/gradeSession.ts';
import { parseReview } from '../../engine/review/parseReview.ts';
import type { Reps, Review } from '../../engine/review/review.ts';
import type { Moment } from '../../engine/time/moment.ts';
import { appFolder, shippedUnder } from './shippedCatalogue.ts';

type TruthRep = {
  readonly rep: number;
  readonly phases_s: Readonly<Record<'eccentric' | 'bottom_pause' | 'concentric' | 'top_pause', [number, number]>>;
  readonly durations_s: Readonly<Record<'eccentric' | 'bottom_pause', number>>;
  readonly commanded_drift_m: number;
  readonly min_depth_surface_m: number;
  readonly at_far: { readonly deg: { readonly neck_flexion: number; readonly knee_flexion: number } };
};

const json = (...parts: string[]): unknown => JSON.parse(readFileSync(path.join(appFolder, ...parts), 'utf8'));
const truth = (clip: string): readonly TruthRep[] =>
  (json('tests/footage', `${clip}.truth.json`) as { reps: TruthRep[] }).reps;

const newest = Math.max(...readdirSync(path.join(appFolder, 'seeds/rubric')).map((file) => Number(/\d+/.exec(file))));
const shipped = shippedUnder(newest);

const read = (file: string): Review => {
  const parsed = parseReview(json('seeds/demo', file), shipped);
  if (!parsed.ok) throw new Error(parsed.sentence);
  return parsed.review;
};
const [demo, earlier] = [read('session.json'), read('earlier.json')];
const clips = [demo, earlier].flatMap(({ entries }) => entries.flatMap((entry) => entry.clips));
const flags = [demo, earlier].flatMap(({ entries }) => entries.flatMap((entry) => entry.flags));
const secondsOf = (moment: Moment | undefined): number =>
  moment !== undefined && 'seconds' in moment ? moment.seconds : Number.NaN;
const speaksOf = (reps: Reps, rep: number): boolean => reps === 'set' || reps.includes(rep);
const repsWith = (clip: string, fault: string): number[] =>
  flags
    .filter((flag) => flag.clip === clip && flag.fault === fault)
    .flatMap((flag) => [1, 2, 3].filter((rep) => speaksOf(flag.reps, rep)))
    .sort();
const repsWhere = (clip: string, holds: (rep: TruthRep) => boolean): number[] =>
  truth(clip)
    .filter(holds)
    .map((rep) => rep.rep);

describe('the demo session', () => {
  it('brings footage that is there, with all three lifts filmed from the side', () => {
    for (const clip of clips) {
      expect(existsSync(path.join(appFolder, 'seeds/demo', clip.path ?? 'none')), clip.id).toBe(true);
      expect(clip.view).toBe('side');
    }
  });

  it('marks the reps where the figure moves', () => {
    for (const clip of clips) {
      const press = clip.id === 'press-portrait';
      const expected = truth(clip.id).map(({ phases_s }) =>
        press
          ? [phases_s.concentric[0], phases_s.bottom_pause[0], phases_s.bottom_pause[1]]
          : [phases_s.eccentric[0], phases_s.bottom_pause[0], phases_s.concentric[1]],
      );
      const marked = clip.reps.map((rep) => [rep.start, rep.stretchedEnd, rep.end].map(secondsOf));
      expect(marked).toHaveLength(expected.length);
      // A frame lasts 33 ms in these clips.
      for (const [i, edges] of expected.entries()) {
        for (const [j, edge] of edges.entries()) expect(marked[i]?.[j]).toBeCloseTo(edge, 2);
      }
    }
  });

  it('sets every flag inside a rep that it speaks of', () => {
    for (const flag of flags) {
      const reps = clips.find((clip) => clip.id === flag.clip)?.reps ?? [];
      const named = reps.filter((rep) => speaksOf(flag.reps, rep.index));
      const at = secondsOf(flag.at);
      expect(
        named.some((rep) => at >= secondsOf(rep.start) && at <= secondsOf(rep.end)),
        flag.id,
      ).toBe(true);
    }
  });

  it('comes a fortnight after another of the same trainee, both under the newest rubric', () => {
    expect(earlier.trainee).toEqual(demo.trainee);
    expect([earlier.session.date, demo.session.date]).toEqual(['2026-10-04', '2026-10-18']);
    expect([earlier, demo].map(({ rubric }) => rubric?.version)).toEqual([newest, newest]);
  });

  it('holds no stop flag, and one note of pain', () => {
    expect(flags.filter(({ severity }) => severity === 'stop')).toEqual([]);
    expect([earlier, demo].map(({ session }) => session.painNote !== '')).toEqual([false, true]);
  });

  it.each(['squat-side', 'squat-walk-out'])(
    'calls short of depth the reps of %s whose hip crease stays above the knee',
    (clip) => {
      expect(repsWith(clip, 'shortOfDepth')).toEqual(repsWhere(clip, (rep) => rep.min_depth_surface_m > 0));
    },
  );

  it.each(['squat-side', 'hinge-side', 'press-portrait'])(
    'flags the drift of the bar in %s on the reps that drift',
    (clip) => {
      expect(repsWith(clip, 'barDriftsForward')).toEqual(repsWhere(clip, (rep) => rep.commanded_drift_m > 0.02));
    },
  );

  it.each(['squat-side', 'squat-walk-out'])(
    'misses the pause where %s stays down for less than half the planned second',
    (clip) => {
      const short = repsWhere(clip, (rep) => rep.durations_s.bottom_pause < 0.5);
      expect(repsWith(clip, 'noLongPause')).toEqual(short);
    },
  );

  it.each(['squat-side', 'squat-walk-out', 'press-portrait'])(
    'calls quick the lowerings of %s that miss two seconds by over half a second',
    (clip) => {
      expect(repsWith(clip, 'quickLowering')).toEqual(repsWhere(clip, (rep) => rep.durations_s.eccentric < 1.5));
    },
  );

  it('reads the head of the hinge as the figure holds it', () => {
    // Over 20 degrees from set-up, chin down is positive.
    expect(repsWith('hinge-side', 'chinDrops')).toEqual(
      repsWhere('hinge-side', (rep) => rep.at_far.deg.neck_flexion > 20),
    );
    expect(repsWith('hinge-side', 'headTiltsBack')).toEqual(
      repsWhere('hinge-side', (rep) => rep.at_far.deg.neck_flexion < -20),
    );
  });

  it('sees the knees take over where they bend by more than 20 degrees', () => {
    // 4 degrees at the top of each rep.
    const bent = repsWhere('hinge-side', (rep) => rep.at_far.deg.knee_flexion - 4 > 20);
    expect(repsWith('hinge-side', 'squatsTheHinge')).toEqual(bent);
  });

  it('ticks nothing that a corrective flag contradicts', () => {
    for (const entry of [...earlier.entries, ...demo.entries]) {
      for (const tick of entry.ticks) {
        const against = entry.flags.filter(
          (flag) =>
            flag.severity !== 'keep' &&
            flag.criterion === tick.criterion &&
            [1, 2, 3].some((rep) => speaksOf(tick.reps, rep) && speaksOf(flag.reps, rep)),
        );
        expect(against.map((flag) => flag.id)).toEqual([]);
      }
    }
  });

  it("has praise, a cue and a note for each lift, and a pain note in the trainee's words", () => {
    for (const entry of demo.entries) {
      expect(entry.flags.some((flag) => flag.severity === 'keep')).toBe(true);
      expect(entry.flags.some((flag) => flag.cue !== '')).toBe(true);
    }
    expect(flags.filter((flag) => flag.note === '')).toEqual([]);
    expect(demo.session.painNote).toMatch(/^My /);
  });

  it('is graded whole: every criterion of every lift was looked at', () => {
    const grade = gradeSession(demo, shipped);
    expect(grade.state.kind).toBe('graded');
    for (const entry of grade.entries) {
      // What would hold the bar if a rep failed is not in the picture.
      const open = entry.criteria.filter(({ applicable, lookedAt }) => applicable && !lookedAt);
      expect(open.filter(({ criterion }) => criterion !== 'setUp')).toEqual([]);
    }
  });
});
