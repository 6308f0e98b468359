import type { Result } from '../../../electron/contract/requests.ts';
import type { Entry } from '../../../engine/review/review.ts';

/** The backend's answer to `review.get`: Mira Holt's session with these entries, nothing of it to be played yet. */
export const reviewAnswer = (entries: Entry[]): Result<'review.get'> => ({
  review: {
    format: 'rackside-review',
    version: 4,
    voice: 'coach',
    trainee: { name: 'Mira Holt', goal: 'strength', experience: 'experienced', units: 'kg', minor: false },
    session: { id: 's1', title: '', date: '2026-03-04', notes: '', painNote: '' },
    entries,
  },
  media: [],
  covers: [],
  secondLookOf: null,
  history: { undo: null, redo: null },
  weekBefore: [],
  readOnly: false,
  names: 'full',
  position: null,
});
