import type { Message } from '../message/message.ts';
import type { Weight } from '../rubric/rubric.ts';

/** What a finding says: what was found, why it matters, what to do about it, and where that comes from. */
export type FindingMessageId =
  | 'repsForGrowth'
  | 'repsForStrength'
  | 'effort'
  | 'order'
  | 'loadOrder'
  | 'setOrder'
  | 'doubledLoad'
  | 'shortEndLoad'
  | 'shortEndPause'
  | 'shortHolds'
  | 'curtailedRange'
  | 'profileBalance'
  | 'weeklyVolume'
  | 'spacing';

/** Something that the plan of a session could do better. */
export type ProgrammeFinding = {
  readonly id: string;
  /** Findings of the same kind on different entries share it: "rep-range". */
  readonly kind: string;
  readonly weight: Weight;
  readonly entryIds: readonly string[];
  /** Names in it are in the language of the catalogue. */
  readonly message: Message<FindingMessageId>;
};
