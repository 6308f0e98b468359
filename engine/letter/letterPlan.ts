import type { FilmEffort } from '../cautions/filmEffort.ts';
import type { Caution } from '../exercises/catalogue.ts';
import type { Fault, View } from '../exercises/exercise.ts';
import type { GradeState, Overridden } from '../grading/grade.ts';
import type { PainReading } from '../pain/painNote.ts';
import type { PainStep } from '../pain/painRule.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import type { FaultLoad } from '../progress/faultChanges.ts';
import type { Work } from '../review/work.ts';
import type { CriterionId, Severity } from '../rubric/rubric.ts';

/** Which reps of a clip: all of them, some by index, or the set as a whole where no reps are marked. */
export type SeenReps =
  | { readonly kind: 'every'; readonly of: number }
  | { readonly kind: 'some'; readonly reps: readonly number[]; readonly of: number }
  | { readonly kind: 'set' };

/** Where something was seen: one set, its reps, the moments in a clip of it. */
export type Sighting = {
  readonly exercise: string;
  readonly clip: string;
  /** Name of the clip; null where the exercise has no other clip to confuse it with. */
  readonly clipName: string | null;
  readonly reps: SeenReps;
  /** What its reps are: repetitions, or holds of one position. */
  readonly unit: 'rep' | 'hold';
  /** The entry it belongs to, and how many reps are marked in all its clips. */
  readonly entry: { readonly id: string; readonly reps: number };
  /** Media times in microseconds, rising. */
  readonly momentsUs: readonly number[];
  /** The same set from other cameras, where it was remarked on in their clips too. */
  readonly alsoIn?: readonly {
    readonly clip: string;
    readonly clipName: string;
    readonly momentsUs: readonly number[];
  }[];
};

/** Something seen that is to stay as it is. `key` names it. */
export type Keep = {
  readonly key: string;
  readonly criterion: string;
  readonly sightings: readonly Sighting[];
  readonly seen: KeepSeen;
};

export type KeepSeen =
  /** The coach's own words, and where they were said. */
  | { readonly kind: 'words'; readonly what: string; readonly of: Sighting | null }
  /** What the rubric says praise of the criterion looks like. */
  | { readonly kind: 'anchor'; readonly what: string }
  /** A hold that stayed as it began. */
  | { readonly kind: 'held' }
  /**
   * How long the way down of one rep took, the shortest of several lifts; `still`: the last of its set, about as long as the
   * first.
   */
  | { readonly kind: 'lowering'; readonly seconds: number; readonly still: boolean; readonly orMore: boolean };

/** One thing to change. */
export type Priority = {
  /** Names what it is about. Other flags don't change it, so edits of its paragraphs stay with it. */
  readonly key: string;
  readonly severity: Severity;
  /** The spine of a lift near its limit: load comes off first, whatever else is gained. */
  readonly urgent: boolean;
  readonly criterion: CriterionId;
  readonly criterionName: string;
  /** The named fault with its why, drill and proof; null for a remark without one. */
  readonly fault: Fault | null;
  readonly exercises: readonly string[];
  readonly sightings: readonly Sighting[];
  /** Each of its remarks with where it was seen and its note, heaviest first: the first that has a still is shown by it. */
  readonly remarks: readonly { readonly flagId: string; readonly sighting: Sighting; readonly note: string }[];
  /** The coach's own words, each once. */
  readonly notes: readonly string[];
  /** The coach's cue, else the fault's; '' where there is neither. */
  readonly cue: string;
  /** The library's cue was given in three letters running and did not help: the body-directed one takes its place. */
  readonly cueIsNew: boolean;
  /** The other cue that would do as well; null where there is none. */
  readonly otherCue: string | null;
  /** What to practise and how success will show; '' where the library has none, or none that suits this lift. */
  readonly drill: string;
  readonly proof: string;
  /** Points the session would gain without all of it; 0 where the grade can't say. */
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

/** What became of one fault since it was last looked at. */
export type Change = {
  readonly kind: 'gone' | 'better' | 'same' | 'back' | 'worse';
  readonly fault: string;
  readonly exercise: string;
  /** Reps that showed it, of how many that were looked at; null where it was not there. */
  readonly before: FaultLoad | null;
  readonly now: FaultLoad | null;
};

/** Pain that the trainee noted, and what it asks of this session's lifts. */
export type PlannedPain = {
  /** The trainee's own words. */
  readonly words: string;
  readonly step: Exclude<PainStep, 'none'>;
  /** Stated, and low enough to go on with care. */
  readonly mild: boolean;
  /** Mild, and gone again within the session. */
  readonly over: boolean;
  readonly redFlag: Extract<PainReading, { readonly kind: 'pain' }>['redFlag'];
  /** Lifts that load the area, each once; and whether they are all there are, as they are where there is none. */
  readonly held: readonly OfExercise[];
  readonly holdsAll: boolean;
  /** Of these, the ones with remarks and those with findings of the programme that wait until it has settled. */
  readonly remarksOn: readonly string[];
  readonly findingsOn: readonly string[];
};

/** What the next film should show; `key` names the request. */
export type FilmRequest = { readonly key: string } & Filming;

/** An exercise by its id and its name. */
export type OfExercise = { readonly exerciseId: string; readonly exercise: string };

type Filming =
  | (OfExercise & { readonly kind: 'none'; readonly view: View })
  | (OfExercise & {
      readonly kind: 'otherView';
      /** The view that shows them; null where no view does. */
      readonly view: View | null;
      readonly criteria: readonly string[];
    })
  /** Criteria that the film shows and nobody has judged yet. */
  | (OfExercise & { readonly kind: 'unseen'; readonly criteria: readonly string[] })
  /** Clips that nobody has looked at yet. */
  | (OfExercise & { readonly kind: 'notLookedAt' })
  /** Clips with plain notes and no judgement yet. */
  | (OfExercise & { readonly kind: 'onlyNotes' })
  /** An exercise that is to be lifted with less load first. */
  | (OfExercise & { readonly kind: 'lighter'; readonly view: View })
  /** An exercise with something unsafe: nothing hard until it is put right. */
  | (OfExercise & { readonly kind: 'afterStop'; readonly view: View })
  /** No film and no exercise known to ask for. */
  | { readonly kind: 'first' }
  /** The same again, of all exercises or of these alone. */
  | { readonly kind: 'again'; readonly exercises: readonly string[] }
  /**
   * Lifts that pain holds back: an easy set once it has settled, or no clip before a clinician has cleared it. No lifts:
   * of any.
   */
  | { readonly kind: 'afterPain'; readonly step: PlannedPain['step']; readonly exercises: readonly string[] }
  /** Pain that holds no lift back: nothing in which it is felt. */
  | { readonly kind: 'withoutPain' };

/** What gains most: a fault in all its places, or a finding about the plan. */
export type Largest =
  | { readonly kind: 'fault'; readonly fault: string; readonly exercises: readonly string[]; readonly gain: number }
  | { readonly kind: 'finding'; readonly gain: number };

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
  /** The largest gain that may be told as points; null where nothing may, or nothing costs any. */
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
  /** Names of the clips, each once. */
  readonly clipNames: readonly string[];
  readonly clips: number;
  readonly reps: number;
  readonly holds: number;
  /** The session is of one exercise alone: nobody needs to be told which. */
  readonly oneLift: boolean;
  readonly overall: Overall;
  /** Every unsafe thing seen, whether or not it is among the priorities. */
  readonly stops: readonly Priority[];
  /** Null where no pain was noted, or the note says that nothing hurts. */
  readonly pain: PlannedPain | null;
  readonly keeps: readonly Keep[];
  /** Since the session before; empty where none is known. */
  readonly changes: readonly Change[];
  /**
   * Several things in the order they are to be taken, or with the choice of which to begin with; one thing with the choice
   * of two cues; null where there is nothing to choose.
   */
  readonly choice:
    | { readonly kind: 'inOrder' }
    | { readonly kind: 'free' }
    | { readonly kind: 'cue'; readonly other: string }
    | null;
  readonly priorities: readonly Priority[];
  /** How many remarks are left to the sheet. */
  readonly remarksLeft: number;
  readonly entries: readonly EntryLine[];
  readonly findings: readonly ProgrammeFinding[];
  readonly film: readonly FilmRequest[];
  /** How hard a set it may ask for. */
  readonly filmEffort: FilmEffort;
  readonly cautions: {
    readonly stop: readonly Caution[];
    readonly pain: readonly Caution[];
    readonly other: readonly Caution[];
  };
  readonly rubric: { readonly name: string; readonly version: number };
};
