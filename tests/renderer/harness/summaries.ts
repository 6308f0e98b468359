import type { SessionSummary } from '../../../electron/contract/desk.ts';
import type { NamedTrainee } from '../../../electron/contract/trainees.ts';

/** A session on the desk: Mira Holt's, judged whole, with two clips; `change` says what is different about it. */
export const summaryOf = (change: Partial<SessionSummary> = {}): SessionSummary => ({
  id: 's1',
  traineeId: 't1',
  traineeName: 'Mira Holt',
  title: '',
  date: '2026-03-04',
  exercises: ['back-squat'],
  clips: 2,
  posters: [],
  flags: 3,
  mark: 'B+',
  provisional: false,
  byHand: false,
  secondLookOf: null,
  readOnly: false,
  archived: false,
  finished: false,
  damaged: false,
  coverage: 1,
  state: 'judged',
  cameAt: '2026-03-05T08:00:00.000Z',
  measured: 2,
  clipsLeft: 0,
  ...change,
});

/** Mira Holt, who trains for strength and wants her full name. */
export const traineeOf = (change: Partial<NamedTrainee> = {}): NamedTrainee => ({
  id: 't1',
  name: 'Mira Holt',
  goal: 'strength',
  experience: 'experienced',
  units: 'kg',
  minor: false,
  names: 'full',
  notes: '',
  archived: false,
  ...change,
});
