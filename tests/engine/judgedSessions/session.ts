import path from 'node:path';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { toText } from '../../../engine/document/toText.ts';
import { editionOf } from '../../../engine/edition/edition.ts';
import type { View } from '../../../engine/exercises/exercise.ts';
import type { GradeState } from '../../../engine/grading/grade.ts';
import type { LetterStyle } from '../../../engine/letter/letter.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import type { PlannedSet } from '../../../engine/review/plan.ts';
import type { Clip, Entry, Flag, Review } from '../../../engine/review/review.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { sayFinding } from '../../../engine/wording/sayGrade.ts';

export const catalogue = loadCatalogue(path.resolve(import.meta.dirname, '../../..'), 3);

/** A fault seen in every clip of a lift: on every rep, or on some. */
export type Seen = {
  readonly fault: string;
  readonly severity: Severity;
  readonly reps?: readonly number[];
  readonly note?: string;
};

/** A lift as it was planned, filmed and judged; what is not flagged was looked at and fine. */
export type Lift = {
  readonly exercise: string;
  readonly sets: readonly PlannedSet[];
  readonly seen?: readonly Seen[];
  readonly view?: View;
  /** Clips that were opened, counted from the first; all of the sets unless stated. */
  readonly opened?: number;
};

/** Sets that are alike: 3 × 8 with 60 kg and two reps left. */
export const alike = (count: number, reps: number, loadKg: number, repsInReserve = 2): PlannedSet[] =>
  Array.from({ length: count }, () => ({ reps, loadKg, repsInReserve }));

type SessionDraft = Partial<Review['trainee']> & {
  readonly pain?: string;
  readonly date?: string;
};

/** A session of a trainee who lifts for growth and is experienced, unless it says otherwise. */
export function session(
  lifts: readonly Lift[],
  { pain = '', date = '2026-05-11', ...trainee }: SessionDraft = {},
): Review {
  return {
    format: 'rackside-review',
    version: 4,
    rubric: { id: 'rackside', version: 3 },
    voice: 'coach',
    coach: 'Sam Keller',
    trainee: {
      ...{ name: 'Nora Field', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
      ...trainee,
    },
    session: { id: `of-${date}`, title: '', date, notes: '', painNote: pain },
    entries: lifts.map(entryOf),
  };
}

function entryOf({ exercise: id, sets, seen = [], view = 'side', opened = sets.length }: Lift, at: number): Entry {
  const exercise = catalogue.exercises.find((one) => one.id === id);
  if (exercise === undefined) throw new Error(`no exercise ${id}`);
  const clips = sets.map((set, index) => clipOf(`${id}-${at}-${index}`, `Set ${index + 1}`, set.reps, view));
  const watched = clips.slice(0, opened);
  return {
    id: `${id}-${at}`,
    exercise: id,
    plan: { sets: [...sets] },
    clips,
    flags: watched.flatMap((clip) =>
      seen.map(({ fault, severity, reps, note = '' }, index): Flag => {
        const criterion = exercise.faults.find((known) => known.id === fault)?.criterion;
        if (criterion === undefined) throw new Error(`no fault ${fault} of ${id}`);
        return {
          ...{ id: `${clip.id}-${index}`, clip: clip.id, criterion, fault, severity, note, cue: '' },
          ...{ reps: reps === undefined ? 'set' : [...reps], at: { seconds: 4 * (reps?.[0] ?? 1) - 2 } },
        };
      }),
    ),
    ticks: watched.flatMap((clip) =>
      (exercise.judgedFrom[view] ?? []).map((criterion) => ({ clip: clip.id, criterion, reps: 'set' as const })),
    ),
  };
}

const clipOf = (id: string, name: string, reps: number, view: View): Clip => ({
  ...{ id, name, view, realTimeFactor: 1 },
  reps: Array.from({ length: reps }, (_, rep) => ({
    index: rep + 1,
    start: { seconds: 4 * rep + 1 },
    stretchedEnd: { seconds: 4 * rep + 3 },
    end: { seconds: 4 * rep + 4.5 },
  })),
});

const markOf = (state: GradeState): string => (state.kind === 'none' ? 'none' : state.mark);

/** What comes out of a session: marks, what the programme says, and the letter, each on one long line. */
export function judged(review: Review, { earlier = [], language = 'en', length = 'full' }: JudgedHow = {}) {
  const style: LetterStyle = { length, tone: 'plain', language };
  const edition = editionOf({ review, catalogue, style, names: 'full', earlier });
  const grade = edition.grade();
  const findings = programmeFindings(edition.review, edition.catalogue, earlier);
  return {
    kind: grade.state.kind,
    mark: markOf(grade.state),
    marks: grade.entries.map(({ state }) => markOf(state)),
    coverage: grade.entries.map(({ coverage }) => coverage),
    kinds: findings.map(({ kind }) => kind),
    programme: findings
      .map((finding) => {
        const { what, why, suggestion } = sayFinding(finding, language);
        return `${what} ${why} ${suggestion}`;
      })
      .join(' '),
    letter: toText(edition.letter().document).replace(/\n! ?/g, '\n').replace(/\s+/g, ' '),
  };
}

type JudgedHow = {
  readonly earlier?: readonly Review[];
  readonly language?: LetterStyle['language'];
  readonly length?: LetterStyle['length'];
};
