import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { unitNames, unitsLookedAt, unitsSpokenOf } from '../review/lookedAt.ts';
import { isJudging } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import { type CriterionId, type Severity, severities } from '../rubric/rubric.ts';

/** How often and how heavily a fault was flagged in one exercise of one session. */
export type FaultLoad = {
  readonly severity: Severity;
  /** Reps (or sets without marked reps) that show it, how many somebody looked at for its criterion, and how many there were. */
  readonly reps: number;
  readonly of: number;
  readonly inAll: number;
};

/** What became of a fault since the last session that can tell of it. */
export type FaultChange = {
  readonly exercise: string;
  readonly criterion: CriterionId;
  readonly fault: string;
  /** `back`: looked for and away last time, seen before that; `gone`: seen last time, looked for now and not there. */
  readonly kind: 'new' | 'back' | 'worse' | 'same' | 'better' | 'gone';
  readonly before: FaultLoad | null;
  readonly now: FaultLoad | null;
};

/** What one session tells of a fault: where it was seen, that it was not there, or nothing. */
type Evidence =
  | { readonly kind: 'seen'; readonly load: FaultLoad }
  | { readonly kind: 'absent' }
  | { readonly kind: 'unknown' };

/** A fault is not there only if at least this share of the reps was looked at for it (common practice, no source). */
const nearlyAll = 0.8;

const heavier = (one: Severity, other: Severity): Severity =>
  severities.indexOf(one) >= severities.indexOf(other) ? one : other;

/** What the entries of one exercise in one session tell of a fault. A criterion that the fault was flagged under counts too. */
function evidenceOf(entries: readonly Entry[], fault: string, criterion: CriterionId): Evidence {
  const looked = new Set<string>();
  const touched = new Set<string>();
  const all = entries.flatMap((entry) => unitNames(entry).map((unit) => `${entry.id} ${unit}`));
  let severity: Severity | null = null;
  for (const entry of entries) {
    const flags = entry.flags.filter(isJudging).filter((flag) => flag.fault === fault && flag.severity !== 'keep');
    const criteria = new Set([criterion, ...flags.map((flag) => flag.criterion)]);
    for (const id of criteria) for (const unit of unitsLookedAt(entry, id)) looked.add(`${entry.id} ${unit}`);
    for (const flag of flags) {
      severity = heavier(flag.severity, severity ?? 'keep');
      for (const unit of unitsSpokenOf(entry, flag)) touched.add(`${entry.id} ${unit}`);
    }
  }
  if (severity !== null)
    return { kind: 'seen', load: { severity, reps: touched.size, of: looked.size, inAll: all.length } };
  return all.length > 0 && looked.size >= nearlyAll * all.length ? { kind: 'absent' } : { kind: 'unknown' };
}

function compareLoads(before: FaultLoad, now: FaultLoad): 'worse' | 'same' | 'better' {
  const bySeverity = severities.indexOf(now.severity) - severities.indexOf(before.severity);
  const byShare = now.reps / Math.max(1, now.of) - before.reps / Math.max(1, before.of);
  // Lighter outweighs more often: the severity says what it costs.
  const difference = bySeverity === 0 ? byShare : bySeverity;
  if (Math.abs(difference) < 1e-9) return 'same';
  return difference < 0 ? 'better' : 'worse';
}

type Told = Pick<FaultChange, 'kind' | 'before' | 'now'>;

/** What became of one fault; `past` is what each earlier session tells, oldest first. */
function changeOf(current: Evidence, past: readonly Evidence[]): Told | null {
  const known = past.filter(({ kind }) => kind !== 'unknown');
  const last = known.at(-1);
  const wasSeen = known.some(({ kind }) => kind === 'seen');
  if (current.kind === 'seen') {
    const now = current.load;
    if (last?.kind === 'seen') return { kind: compareLoads(last.load, now), before: last.load, now };
    return { kind: wasSeen ? 'back' : 'new', before: null, now };
  }
  return current.kind === 'absent' && last?.kind === 'seen' ? { kind: 'gone', before: last.load, now: null } : null;
}

/**
 * Each named fault of the exercises that the session shares with an earlier one: new, back, worse, same, better (lighter, or
 * on a smaller share of the reps) or gone, against the latest session that can tell of it. A session tells that a fault is not
 * there only if nearly all reps were looked at for its criterion; a fault that this session can't tell of is left out.
 * @param earlier the trainee's sessions before this one, oldest first
 */
export function compareSessions(review: Review, earlier: readonly Review[], catalogue: Catalogue): FaultChange[] {
  const exercises = [...new Set(review.entries.map(({ exercise }) => exercise))];
  return exercises.flatMap((exercise): FaultChange[] => {
    const inSession = (one: Review): Entry[] => one.entries.filter((entry) => entry.exercise === exercise);
    const past = earlier.map(inSession).filter((entries) => entries.some(({ clips }) => clips.length > 0));
    if (past.length === 0) return [];
    const current = inSession(review);
    const known = findExercise(catalogue, exercise)?.faults ?? [];
    return known.flatMap(({ id: fault, criterion }): FaultChange[] => {
      const tell = (entries: readonly Entry[]) => evidenceOf(entries, fault, criterion);
      const change = changeOf(tell(current), past.map(tell));
      return change === null ? [] : [{ exercise, criterion, fault, ...change }];
    });
  });
}
