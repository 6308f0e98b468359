import { clipMenu, entryMenu } from '../../commands/arrangingCommands.ts';
import type { Command } from '../../commands/command.ts';
import { nextToDo } from '../../commands/nightCommands.ts';
import { handOver, historyCommands, letter } from '../../commands/sessionCommands.ts';
import { playingCommands } from '../../player/playingCommands.ts';
import { arrangingCommands } from './arranging.ts';
import { cameraCommands } from './cameras.ts';
import { cover } from './covering.ts';
import { draw } from './drawing.ts';
import { flaggingCommands } from './flagging.ts';
import { framingCommands } from './framing.ts';
import { judgingCommands } from './judging.ts';
import { leftToJudgeCommands } from './leftToJudge.ts';
import { lookingCommands } from './looking.ts';
import { repChoiceCommands, repCommands } from './markingReps.ts';
import { layerCommands, measuringCommands } from './measuring.ts';
import { cellCommands, clipCommands } from './moving.ts';
import { narratingCommands } from './narrating.ts';
import { repeatingCommands } from './repeating.ts';
import type { ReviewContext } from './reviewContext.ts';
import { setUp } from './settingUp.ts';
import { suggestionCommands } from './suggestions.ts';

/** Every command of the review, in the order of the key sheet. */
export const reviewCommands: readonly Command<ReviewContext>[] = [
  ...cellCommands,
  ...judgingCommands,
  ...leftToJudgeCommands,
  ...repChoiceCommands,
  ...flaggingCommands,
  ...repCommands,
  ...measuringCommands,
  setUp,
  ...suggestionCommands,
  ...Object.values(layerCommands),
  ...playingCommands,
  ...repeatingCommands,
  draw,
  cover,
  ...framingCommands,
  ...narratingCommands,
  ...lookingCommands,
  ...arrangingCommands,
  ...clipCommands,
  ...clipMenu,
  ...entryMenu,
  ...cameraCommands,
  nextToDo,
  ...historyCommands,
  letter,
  handOver,
];
