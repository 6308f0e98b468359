import * as v from 'valibot';
import { type View, viewSchema } from '../exercises/exercise.ts';
import { daySchema } from '../time/day.ts';

/** What a person said of a clip in the inbox; what is missing is guessed. */
export const choiceSchema = v.strictObject({
  /** Whose clip it is: a trainee by id, or one to be added by this name. */
  traineeId: v.optional(v.string()),
  newTrainee: v.optional(v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(200))),
  sessionId: v.optional(v.string()),
  /** The day of the session, where none is named. */
  date: v.optional(daySchema),
  exercise: v.optional(v.string()),
  /** Null = not stated. */
  view: v.optional(v.nullable(viewSchema)),
  loadKg: v.optional(v.nullable(v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1000)))),
  /** It comes in although the library holds the same film already. */
  anyway: v.optional(v.boolean()),
});
export type Choice = v.InferOutput<typeof choiceSchema>;

/** A clip that came in and belongs to no session yet. */
export type ArrivedClip = {
  readonly id: string;
  /** The file's name. */
  readonly name: string;
  /** The folders it lay in, the innermost last. */
  readonly folders: readonly string[];
  /** When it was filmed, as an ISO instant. */
  readonly recordedAt: string;
  /** The day on the wall calendar where it was filmed. */
  readonly recordedDay: string;
  /** Where the joints say the camera stood, where they were looked for. */
  readonly seenFrom: View | null;
  readonly choice: Choice;
};

/** A session that clips may go to, with its exercises in order. */
export type OpenSession = {
  readonly id: string;
  readonly traineeId: string;
  readonly date: string;
  readonly entries: readonly OpenEntry[];
};

/** An exercise of a session: the sets that were planned, null without a plan, and the clips it has. */
export type OpenEntry = { readonly exercise: string; readonly plannedSets: number | null; readonly clips: number };

/** A value with what it rests on; null = nothing is known. */
export type Guess<T, B extends string> = { readonly value: T; readonly basis: B };

export type Owner =
  | { readonly kind: 'known'; readonly traineeId: string }
  | { readonly kind: 'new'; readonly name: string };

export const traineeBases = ['chosen', 'folder', 'fileName', 'only', 'lastUsed'] as const;
export const sessionBases = ['chosen', 'recorded'] as const;
export const exerciseBases = ['chosen', 'fileName', 'folder', 'plan', 'before'] as const;
export const viewBases = ['chosen', 'joints', 'fileName', 'before'] as const;
export const loadBases = ['chosen', 'fileName'] as const;

/** Where a clip goes, guess by guess. */
export type Placement = {
  readonly id: string;
  readonly trainee: Guess<Owner, (typeof traineeBases)[number]> | null;
  /** The session it goes to, null = a new one, and its day; null without a trainee. */
  readonly session: Guess<{ readonly id: string | null; readonly date: string }, (typeof sessionBases)[number]> | null;
  readonly exercise: Guess<string, (typeof exerciseBases)[number]> | null;
  readonly view: Guess<View | null, (typeof viewBases)[number]> | null;
  readonly loadKg: Guess<number | null, (typeof loadBases)[number]> | null;
};
