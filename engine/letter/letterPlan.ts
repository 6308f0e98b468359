import type { Caution } from '../exercises/catalogue.ts';
import type { Fault, View } from '../exercises/exercise.ts';
import type { GradeState, Overridden } from '../grading/grade.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import type { Work } from '../review/work.ts';
import type { CriterionId, Weight } from '../rubric/rubric.ts';

/** Which reps of a clip: all of them, some by index, or the set as a whole where no reps are marked. */
export type SeenReps =
  | { readonly kind: 'every'; readonly of: number }
  | { readonly kind: 'some'; readonly reps: readonly number[]; readonly of: number }
  | { readonly kind: 'set' };

/** Where something was seen: one clip, its reps, the moments. */
export type Sighting = {
  readonly exercise: string;
  readonly clip: string;
  /** Name of the clip; null where the exercise has no other clip to confuse it with. */
  readonly clipName: string | null;
  readonly reps: SeenReps;
  /** Media times in microseconds, rising. */
  readonly momentsUs: readonly number[];
};

/** Something to keep: praise of the coach's own, or criteria that were looked at and cost nothing. `key` names it. */
export type Keep =
  | {
      readonly kind: 'praised';
      readonly key: string;
      readonly sightings: readonly Sighting[];
      readonly criterion: string;
      /** What was good: the coach's words, else what the rubric says praise looks like. */
      readonly what: string;
    }
  | {
      readonly kind: 'fine';
      readonly key: string;
      readonly exercise: string;
      readonly criteria: readonly string[];
      /** Reps looked at, where that was all of them. */
      readonly allReps: number | null;
    };

/** One thing to change. */
export type Priority = {
  /** Names what it is about. Other flags don't change it, so edits of its paragraphs stay with it. */
  readonly key: string;
  readonly weight: Weight;
  readonly criterion: CriterionId;
  readonly criterionName: string;
  /** The named fault with its why, drill and proof; null for a remark without one. */
  readonly fault: Fault | null;
  readonly exercises: readonly string[];
  readonly sightings: readonly Sighting[];
  /** Each of its remarks with where it was seen, heaviest first: the first that has a still is shown by it. */
  readonly remarks: readonly { readonly flagId: string; readonly sighting: Sighting }[];
  /** The coach's own words, each once. */
  readonly notes: readonly string[];
  /** The coach's cue, else the fault's; '' where there is neither. */
  readonly cue: string;
  /** The library's cue was given in three letters running and did not help: the body-directed one takes its place. */
  readonly cueIsNew: boolean;
  /** Points the session would gain without it; 0 where the grade can't say. */
  readonly gain: number;
};

export type EntryLine = {
  readonly entryId: string;
  readonly exercise: string;
  /** Null where nothing is known of it. */
  readonly work: Work | null;
  readonly clipNames: readonly string[];
  readonly state: GradeState;
  readonly override: Overridden | null;
  readonly coverage: number;
  readonly cappedByStop: boolean;
};

/** What became of one fault since the session before. */
export type Change = {
  readonly kind: 'back' | 'worse' | 'better' | 'gone';
  readonly fault: string;
  readonly exercise: string;
  /** Reps that showed it, of how many; null where it was not there. */
  readonly before: { readonly reps: number; readonly of: number } | null;
  readonly now: { readonly reps: number; readonly of: number } | null;
};

/** What the next film should show; `key` names the request. */
export type FilmRequest = { readonly key: string } & Filming;

/** An exercise by its id and its name. */
type OfExercise = { readonly exerciseId: string; readonly exercise: string };

type Filming =
  | (OfExercise & { readonly kind: 'none'; readonly view: View })
  | (OfExercise & {
      readonly kind: 'otherView';
      /** The view that shows them; null where no view does. */
      readonly view: View | null;
      readonly criteria: readonly string[];
    })
  | (OfExercise & { readonly kind: 'unseen'; readonly view: View; readonly criteria: readonly string[] })
  /** An exercise with something unsafe: nothing hard until it is put right. */
  | (OfExercise & { readonly kind: 'afterStop'; readonly view: View })
  /** No film and no exercise known to ask for. */
  | { readonly kind: 'first' }
  | { readonly kind: 'again' }
  /** Pain was noted: nothing hard again until it has settled. */
  | { readonly kind: 'afterPain' };

/** What gains most: a fault in an exercise, or a finding about the plan. */
export type Largest =
  | { readonly kind: 'fault'; readonly fault: string; readonly exercise: string; readonly gain: number }
  | { readonly kind: 'finding'; readonly finding: ProgrammeFinding; readonly gain: number };

export type Overall = {
  readonly state: GradeState;
  readonly override: Overridden | null;
  readonly technique: number | null;
  readonly programme: number | null;
  /** Points that the programme takes off technique; null without a plan, and where it counts by a share. */
  readonly programmeCost: number | null;
  readonly cappedByStop: boolean;
  readonly range: { readonly low: number; readonly high: number } | null;
  /** What was remarked on in the session: something unsafe, something to change, or nothing. */
  readonly remarked: 'stop' | 'something' | 'nothing';
  /** The largest gain; null where nothing costs points. Stops are no gain: they come first, whatever they cost. */
  readonly largest: Largest | null;
};

/** Everything the letter says, before it is worded. */
export type LetterPlan = {
  readonly voice: 'coach' | 'self';
  readonly units: 'kg' | 'lb';
  readonly coach: string;
  readonly trainee: string;
  /** ISO date of the session. */
  readonly date: string;
  readonly clipNames: readonly string[];
  readonly reps: number;
  readonly overall: Overall;
  /** Every unsafe thing seen, whether or not it is among the priorities. */
  readonly stops: readonly Priority[];
  /** The trainee's words on pain; '' where there are none. */
  readonly painNote: string;
  readonly keeps: readonly Keep[];
  /** Since the session before; empty where none is known. */
  readonly changes: readonly Change[];
  /** One harmless choice to offer: which thing to begin with, or which of two cues; null where there is none. */
  readonly choice: { readonly kind: 'order' } | { readonly kind: 'cue'; readonly other: string } | null;
  readonly priorities: readonly Priority[];
  /** How many remarks are left to the sheet. */
  readonly remarksLeft: number;
  readonly entries: readonly EntryLine[];
  readonly findings: readonly ProgrammeFinding[];
  readonly film: readonly FilmRequest[];
  readonly cautions: {
    readonly stop: readonly Caution[];
    readonly pain: readonly Caution[];
    readonly other: readonly Caution[];
  };
  readonly rubric: { readonly name: string; readonly version: number };
  readonly stopCap: { readonly exercise: number; readonly session: number };
};
