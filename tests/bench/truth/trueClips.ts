import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';

const second = v.nullable(v.number());
const span = v.tuple([v.number(), v.number()]);

/** Truth of a rendered clip: what the figure was made to do. */
const renderedSchema = v.object({
  file: v.string(),
  lift: v.picklist(['squat', 'hinge', 'split', 'press']),
  barbell: v.nullable(v.unknown()),
  camera: v.object({ centre_m: v.tuple([v.number(), v.number(), v.number()]), moving: v.boolean() }),
  reps: v.array(
    v.object({
      phases_s: v.object({ eccentric: span, bottom_pause: span, concentric: span, top_pause: span }),
      durations_s: v.object({
        eccentric: v.number(),
        bottom_pause: v.number(),
        concentric: v.number(),
        top_pause: v.number(),
      }),
      rom_m: v.number(),
      concentric_peak_velocity_mps: v.number(),
      concentric_mean_velocity_mps: v.number(),
      bar_x_range_m: v.nullable(v.tuple([v.number(), v.number()])),
      commanded_drift_m: v.number(),
    }),
  ),
});
export type RenderedRep = v.InferOutput<typeof renderedSchema>['reps'][number];

/** Truth of a camera clip: what was seen by eye. A null was not seen. */
const filmedSchema = v.object({
  file: v.string(),
  exercise_id: v.string(),
  view: v.optional(v.string(), ''),
  reps: v.array(v.object({ start: second, turn: second, end: second })),
});

export type TrueRep = {
  readonly startS: number | null;
  /** End of the rep's first move: the lowest point of a squat, the lockout of a press. */
  readonly turnS: number | null;
  readonly endS: number | null;
  /** Null: no numbers are known beside the times. */
  readonly rendered: RenderedRep | null;
};

export type TrueClip = {
  readonly name: string;
  /** Path of the clip. */
  readonly file: string;
  /** Id of the exercise. */
  readonly exercise: string;
  readonly kind: 'rendered' | 'filmed';
  /** Where the camera stands; empty: not written down. */
  readonly view: string;
  readonly reps: readonly TrueRep[];
};

const exerciseOfLift = {
  squat: 'back-squat',
  hinge: 'romanian-deadlift',
  split: 'split-squat',
  press: 'overhead-press',
} as const;

/** Every clip with a truth file in the folders; the clip lies beside it, or in another of the folders. */
export function trueClipsIn(folders: readonly string[]): TrueClip[] {
  return folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith('.truth.json'))
      .sort()
      .map((file) => readTrueClip(path.join(folder, file), folders)),
  );
}

function readTrueClip(truthFile: string, folders: readonly string[]): TrueClip {
  const name = path.basename(truthFile, '.truth.json');
  const written: unknown = JSON.parse(readFileSync(truthFile, 'utf8'));
  if (v.is(renderedSchema, written)) return fromRendered(name, v.parse(renderedSchema, written), folders);
  const { file, exercise_id: exercise, view, reps } = v.parse(filmedSchema, written);
  return {
    ...{ name, exercise, view: view.split(' (')[0] ?? '', kind: 'filmed' },
    file: findFile(file, [path.dirname(truthFile), ...folders]),
    reps: reps.map(({ start, turn, end }) => ({ startS: start, turnS: turn, endS: end, rendered: null })),
  };
}

function fromRendered(
  name: string,
  { file, lift, barbell, camera, reps }: v.InferOutput<typeof renderedSchema>,
  folders: readonly string[],
): TrueClip {
  const [first, second] =
    lift === 'press' ? (['concentric', 'eccentric'] as const) : (['eccentric', 'concentric'] as const);
  const [x, y] = camera.centre_m;
  // The figure faces along x.
  const azimuthDeg = Math.round((Math.atan2(Math.abs(y), x) * 180) / Math.PI);
  return {
    ...{ name, kind: 'rendered', view: `${azimuthDeg}° from the front${camera.moving ? ', hand-held' : ''}` },
    file: findFile(file, folders),
    exercise: barbell === null ? 'bodyweight-squat' : exerciseOfLift[lift],
    reps: reps.map((rendered) => ({
      startS: rendered.phases_s[first][0],
      turnS: rendered.phases_s[first][1],
      endS: rendered.phases_s[second][1],
      rendered,
    })),
  };
}

function findFile(file: string, folders: readonly string[]): string {
  const found = folders.map((folder) => path.join(folder, file)).find((one) => existsSync(one));
  if (found === undefined) throw new Error(`There is no clip ${file} in ${folders.join(', ')}.`);
  return found;
}
