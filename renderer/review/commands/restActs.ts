import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { type ScorecardModel, scorecardModel } from '../model/scorecardModel.ts';
import { nextUnseen, restOfClip } from '../model/unseen.ts';
import { cursorState } from '../state/cursorState.ts';
import { here } from './here.ts';
import { visitCell } from './moveActs.ts';

function modelHere(): ScorecardModel | null {
  const now = here();
  return now === null ? null : scorecardModel(now.entry, now.grade, now.catalogue.rubric.criteria);
}

/** Goes to the next cell that nobody has looked at, and shows it. */
export function goToUnseen(): void {
  const model = modelHere();
  const cell = model === null ? null : nextUnseen(model, cursorState.getState());
  if (cell === null) statusState.getState().tell('Everything that the clips of this exercise can show is looked at.');
  else visitCell(cell.criterion, cell.column);
}

/** Ticks all that is not marked yet on the clip on the stage. */
export async function fineRest(): Promise<void> {
  const now = here();
  const model = modelHere();
  if (now === null || model === null) return;
  const ticks = restOfClip(model, now.clip.id);
  if (ticks.length === 0) return;
  await mutate('ticks.setMany', {
    clipId: now.clip.id,
    ticks: ticks.map(({ criterion, reps }) => ({ criterion, reps: reps === 'set' ? 'set' : [...reps] })),
  });
}
