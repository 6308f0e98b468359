import type { Message } from '../message/message.ts';
import type { Severity } from '../rubric/rubric.ts';

/** What a finding says: what was found, why it matters, what to do about it, and where that comes from. */
export type FindingMessageId =
  | 'repsFewForGrowth'
  | 'repsManyForGrowth'
  | 'repsManyForStrength'
  | 'effort'
  | 'order'
  | 'loadOrder'
  | 'setOrder'
  | 'volume'
  | 'volumeOfOne'
  | 'shortenedEndLoad'
  | 'shortenedEndWarmUp'
  | 'shortenedEndPause'
  | 'shortenedEndPauses'
  | 'curtailedRange'
  | 'curtailedSetUp'
  | 'ladder'
  | 'bandAssisted'
  | 'railBackward'
  | 'railFacing'
  | 'weeklyVolume'
  | 'spacing';

/** What a finding asks to change in the plan, so that it can be carried out and checked again. */
export type Advice =
  /** Hard sets of entries; 0 leaves an entry out. */
  | { readonly kind: 'sets'; readonly changes: readonly { readonly entryId: string; readonly to: number }[] }
  /** Another exercise beside an entry or in its place: by id, best first, never empty. */
  | { readonly kind: 'exercise'; readonly entryId: string; readonly to: readonly string[] }
  /** These entries in this order. */
  | { readonly kind: 'order'; readonly entryIds: readonly string[] }
  /** The sets of these entries from heavy to light. */
  | { readonly kind: 'heaviestFirst'; readonly entryIds: readonly string[] }
  | { readonly kind: 'tempo'; readonly changes: readonly { readonly entryId: string; readonly tempo: string }[] }
  | { readonly kind: 'reps'; readonly entryIds: readonly string[]; readonly from: number; readonly to: number }
  | { readonly kind: 'repsInReserve'; readonly entryIds: readonly string[]; readonly to: number }
  /** Something about the place or the day, which a plan doesn't hold. */
  | { readonly kind: 'setUp' | 'rest' };

/**
 * What a finding rests on. Only those that rest on the plan of the session itself cost points: a grade must not change
 * when another session does, and what rests on the film has its cost in the flags already.
 */
export type Ground = 'plan' | 'film' | 'week';

/** Something that the plan of a session could do better. */
export type ProgrammeFinding = {
  readonly id: string;
  /** Findings of the same kind on different entries share it: "rep-range". */
  readonly kind: string;
  readonly severity: Severity;
  readonly restsOn: Ground;
  readonly entryIds: readonly string[];
  /** Names in it are in the language of the catalogue. */
  readonly message: Message<FindingMessageId>;
  readonly advice: Advice;
};

/** The findings that cost points of the session. */
export const costing = (findings: readonly ProgrammeFinding[]): ProgrammeFinding[] =>
  findings.filter(({ restsOn }) => restsOn === 'plan');
