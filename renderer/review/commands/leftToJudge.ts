import type { Reps } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';
import { allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { type Cell, type ScorecardModel, scorecardModel } from '../model/scorecardModel.ts';
import { nextUnseen, restOfClip } from '../model/unseen.ts';
import { goToCell } from './moving.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

function modelOf({ stage }: ReviewContext): ScorecardModel | null {
  return stage === null ? null : scorecardModel(stage.entry, stage.grade, stage.catalogue, stage.clip.id);
}

function nextCell(context: ReviewContext): Cell | null {
  const model = modelOf(context);
  return model === null ? null : nextUnseen(model, context.cursor);
}

type Ticks = readonly { readonly criterion: string; readonly reps: Reps }[];

function restOfStage(context: ReviewContext): Ticks {
  const model = modelOf(context);
  return model === null || context.stage === null ? [] : restOfClip(model, context.stage.clip.id);
}

const shared = { group: 'scorecard' } as const;

/** Ticks all that is not marked yet on the clip on the stage. */
export const fineRest: Command<ReviewContext> = {
  ...shared,
  ...named('fineRest'),
  keys: ['Shift+F'],
  readOnly: 'refused',
  when: (context) =>
    allOf(isOnStage(context), restOfStage(context).length === 0 ? unavailable(sayReasons('clipLookedAt')) : available),
  run: async (context) => {
    const { stage } = context;
    const ticks = restOfStage(context);
    if (stage === null || ticks.length === 0) return;
    await mutate('ticks.setMany', {
      clipId: stage.clip.id,
      ticks: ticks.map(({ criterion, reps }) => ({ criterion, reps: reps === 'set' ? 'set' : [...reps] })),
    });
  },
};

/** Goes to the next cell that nobody has looked at, and shows it. */
export const nextToJudge: Command<ReviewContext> = {
  ...shared,
  ...named('nextUnseen'),
  keys: ['U'],
  readOnly: 'refused',
  when: (context) =>
    allOf(isOnStage(context), nextCell(context) === null ? unavailable(sayReasons('exerciseLookedAt')) : available),
  run: (context) => {
    const cell = nextCell(context);
    if (cell !== null) goToCell(context, cell.criterion, cell.column);
  },
};

/** What is left to judge. */
export const leftToJudgeCommands: readonly Command<ReviewContext>[] = [fineRest, nextToJudge];
