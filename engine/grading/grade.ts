import type { Message } from '../message/message.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import type { CriterionId, MarkedScore, Severity } from '../rubric/rubric.ts';

/** What one flag did to one criterion: the leaf of the tree. */
export type FlagCost = {
  readonly flagId: string;
  readonly fault: string | null;
  readonly severity: Severity;
  readonly cost: number;
};

/** One unit of judgement: a rep of a clip, or the whole set of a clip without marked reps (`rep` null). */
export type RepScore = {
  readonly clip: string;
  readonly rep: number | null;
  /** 0-100. */
  readonly score: number;
  readonly flags: readonly FlagCost[];
};

export type CriterionScore = {
  readonly criterion: CriterionId;
  /** Share among all criteria of the exercise, as the library states it. */
  readonly share: number;
  /** The views of the clips can judge it, or somebody judged it. */
  readonly applicable: boolean;
  readonly lookedAt: boolean;
  /** The clips whose view can judge it. */
  readonly shownBy: readonly string[];
  /** Reps (and sets without marked reps) that were looked at, and that can be judged or were. */
  readonly cells: { readonly lookedAt: number; readonly applicable: number };
  /** 0-100: the mean of its reps; null while not looked at. */
  readonly score: number | null;
  /** Those looked at, in the order of clips and reps. */
  readonly reps: readonly RepScore[];
};

/** Points that an exercise's score loses: by its weighted mean, and by each of its lowest criteria that the rubric names. */
export type ScoreLoss = {
  readonly mean: number;
  /** `rank` 1 is the lowest criterion, 2 the second lowest; `points` may be 0. */
  readonly lowest: readonly {
    readonly rank: number;
    readonly criterion: CriterionId;
    readonly score: number;
    readonly points: number;
  }[];
};

/** What every raise tells. */
type RaiseBase = {
  /** The entries that it lies in. */
  readonly entryIds: readonly string[];
  readonly severity: Severity;
  /** The flags that would be gone; empty for a finding about the plan. */
  readonly flagIds: readonly string[];
  /** Reps (or sets without marked reps) that its flags touch, one criterion at a time. */
  readonly reps: number;
  /**
   * Exact gain in points of the grade that counts if it were gone, what its flags touch still looked at. A grade set by
   * hand gains only what a stop's cap holds back.
   */
  readonly gain: number;
};

/** One group of equal faults: same entry, criterion, fault, severity. */
export type GroupRaise = RaiseBase & {
  readonly kind: 'group';
  readonly entryId: string;
  readonly criterion: CriterionId;
  readonly fault: string | null;
};

/**
 * All stop flags together, where there are several groups of them: each by itself gains nothing while another one holds
 * the cap.
 */
export type StopsRaise = RaiseBase & { readonly kind: 'stops'; readonly severity: 'stop'; readonly groups: number };

/** A finding about the plan. */
export type FindingRaise = RaiseBase & { readonly kind: 'finding'; readonly findingId: string };

/** What would raise a grade, and by how much. */
export type Raise = GroupRaise | StopsRaise | FindingRaise;

/** Why there is no grade; shares in its values are whole per cent. */
export type MissingGradeId =
  | 'noClip'
  | 'viewShowsNothing'
  | 'nothingLookedAt'
  | 'tooLittleLookedAt'
  | 'unknownExercise'
  | 'noExercise'
  | 'noGradedExercise';
export type MissingGrade = Message<MissingGradeId>;

export type GradeState =
  | ({ readonly kind: 'graded' } & MarkedScore)
  | ({ readonly kind: 'provisional' } & MarkedScore)
  | { readonly kind: 'none'; readonly reason: MissingGrade };

/** A grade set by hand, and what the arithmetic says by itself. */
export type Overridden = { readonly reason: string; readonly computed: GradeState };

export type EntryGrade = {
  readonly entryId: string;
  readonly exercise: string;
  readonly setsDone: number;
  /** The grade that counts: the coach's where they set one by hand, else the arithmetic's. */
  readonly state: GradeState;
  readonly override: Overridden | null;
  /** Looked-at share / applicable share, 0-1: counted rep by rep or by whole criteria, as the rubric says. */
  readonly coverage: number;
  readonly weightedMean: number | null;
  readonly lowest: { readonly criterion: CriterionId; readonly score: number } | null;
  /** What the score lost before a cap; null without a score. */
  readonly lost: ScoreLoss | null;
  /** A stop flag holds the score down to the rubric's cap. */
  readonly cappedByStop: boolean;
  /** Score with what was not looked at taken at the rubric's low and high assumption. */
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly criteria: readonly CriterionScore[];
  readonly raises: readonly Raise[];
};

export type SessionGrade = {
  readonly rubric: { readonly id: string; readonly version: number };
  /** The grade that counts: the coach's where they set one by hand, else the arithmetic's. */
  readonly state: GradeState;
  readonly override: Overridden | null;
  readonly technique: number | null;
  /** Score of the programme, 0-100; null without a plan. */
  readonly programme: number | null;
  /** Points that the programme takes off technique; null without a plan, and where it counts by a share instead. */
  readonly programmeCost: number | null;
  readonly findings: readonly ProgrammeFinding[];
  readonly cappedByStop: boolean;
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly entries: readonly EntryGrade[];
  /** Over the whole session and its plan, gains in points of the session score, largest first. */
  readonly raises: readonly Raise[];
};
