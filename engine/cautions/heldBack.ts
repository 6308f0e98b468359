import { type Catalogue, findExercise, untranslated } from '../exercises/catalogue.ts';
import type { Raise } from '../grading/grade.ts';
import { type PainReading, readPainNote } from '../pain/painNote.ts';
import { isHeldByPain, painStep } from '../pain/painRule.ts';
import type { FindingMessageId, ProgrammeFinding } from '../programme/finding.ts';
import type { Entry, Review } from '../review/review.ts';

/** What pain holds back in a session. */
export type HeldBack = {
  readonly reading: PainReading;
  /** Ids of the entries whose lift loads the area. */
  readonly entries: ReadonlySet<string>;
  /** Whether a programme finding asks for more of a lift that loads the area. */
  readonly holdsFinding: (finding: ProgrammeFinding) => boolean;
  /** Whether a gain lies in such a lift or such a finding. */
  readonly holdsRaise: (raise: Raise, findings: readonly ProgrammeFinding[]) => boolean;
  /** A finding as it may be said: of a lift that loads the area no set is added back. */
  readonly withoutMore: (finding: ProgrammeFinding) => ProgrammeFinding;
};

/** Findings that take work away: they may stand while pain settles. */
const lessWork: ReadonlySet<FindingMessageId> = new Set(['volume', 'volumeOfOne', 'weeklyVolume', 'spacing'] as const);

/** The exercises that a finding asks to do instead or besides. */
const asksFor = ({ advice }: ProgrammeFinding): readonly string[] => (advice.kind === 'exercise' ? advice.to : []);

/** Reads a session's note on pain against its lifts. */
export function heldBack(review: Review, catalogue: Catalogue): HeldBack {
  const reading = readPainNote(review.session.painNote);
  const original = untranslated(catalogue);
  const isHeld = (id: string): boolean => isHeldByPain(reading, findExercise(original, id));
  const holds = ({ exercise }: Entry): boolean => isHeld(exercise);
  const entries = new Set(review.entries.filter(holds).map(({ id }) => id));
  const stops = painStep(reading) === 'stop';
  const holdsFinding = (finding: ProgrammeFinding): boolean =>
    (stops || !lessWork.has(finding.message.id)) &&
    (finding.entryIds.some((id) => entries.has(id)) || asksFor(finding).some(isHeld) || (stops && everywhere(reading)));
  const holdsRaise = (raise: Raise, findings: readonly ProgrammeFinding[]): boolean =>
    raise.kind === 'finding'
      ? findings.some((finding) => finding.id === raise.findingId && holdsFinding(finding))
      : raise.entryIds.some((id) => entries.has(id));
  const withoutMore = (finding: ProgrammeFinding): ProgrammeFinding => {
    const { id, values } = finding.message;
    if (!('addsBack' in values) || !finding.entryIds.some((one) => entries.has(one))) return finding;
    return { ...finding, message: { id, values: { ...values, addsBack: 'no' } } };
  };
  return { reading, entries, holdsFinding, holdsRaise, withoutMore };
}

const everywhere = (reading: PainReading): boolean => reading.kind === 'pain' && reading.areas === 'all';
