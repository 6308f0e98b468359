import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { NamedTrainee } from '../../electron/contract/trainees.ts';
import { isSameName } from '../../engine/names/folding.ts';
import { deskState } from './deskState.ts';
import { libraryState } from './libraryState.ts';

/** Whether the library is somebody's own, who reviews their own sets. */
export const useIsSelfReview = (): boolean =>
  libraryState(({ library }) => library?.kind === 'open' && library.voice === 'self');

/** The name of the one person of a self-review; null where a coach reviews, or no name was given. */
export function useMyName(): string | null {
  const given = libraryState(({ library }) =>
    library?.kind === 'open' && library.voice === 'self' ? library.coach : null,
  );
  const only = deskState(({ trainees }) => (trainees.length === 1 ? (trainees[0]?.name ?? null) : null));
  return given === '' ? only : given;
}

/** What is known of the one person of a self-review; null where a coach reviews, or nothing is known of them yet. */
export function useMyself(): NamedTrainee | null {
  const name = useMyName();
  return deskState(
    ({ trainees }) => trainees.find((trainee) => name !== null && isSameName(trainee.name, name)) ?? null,
  );
}

/** Whether a session is the person's own, who needs no name to tell it by. */
export function useIsMine(): (session: Pick<SessionSummary, 'traineeName'>) => boolean {
  const name = useMyName();
  return ({ traineeName }) => traineeName === name;
}
