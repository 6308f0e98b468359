import type { CommandId } from '../../engine/wording/english/desk/commands.ts';
import type { Command } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { type PlayingContext, playingCommands } from '../player/playingCommands.ts';
import { changeInStep, joinZooms, mirror, showWhole, zoomAt } from './compareDesk.ts';

export type CompareContext = PlayingContext & {
  /** Puts the clip before or after on the right, in the order of their days. */
  readonly chooseRight: (step: 1 | -1) => void;
};

type Comparing = Command<CompareContext>;

const looking = (id: CommandId, keys: readonly string[], run: Comparing['run']): Comparing => ({
  ...named(id),
  group: 'picture',
  keys,
  readOnly: 'allowed',
  run,
});

export const inStepOther = looking('inStepOther', ['Shift+Z'], changeInStep);
export const zoomsTogether = looking('zoomsTogether', ['Mod+Shift+K'], joinZooms);
export const mirrorLeft = looking('mirrorLeft', ['Shift+I'], () => mirror('left'));
export const mirrorRight = looking('mirrorRight', ['Shift+J'], () => mirror('right'));
export const bothCloser = looking('bothCloser', ['Mod+Shift+U'], () => zoomAt('left', Math.SQRT2));
export const bothFurther = looking('bothFurther', ['Shift+U'], () => zoomAt('left', Math.SQRT1_2));
export const bothWhole = looking('bothWhole', ['Shift+X'], showWhole);
const olderRight = looking('olderRight', ['Shift+Y'], ({ chooseRight }) => chooseRight(1));
const newerRight = looking('newerRight', ['Shift+Q'], ({ chooseRight }) => chooseRight(-1));

/** The commands of the comparison. */
export const compareCommands: readonly Comparing[] = [
  ...playingCommands,
  inStepOther,
  zoomsTogether,
  mirrorLeft,
  mirrorRight,
  bothCloser,
  bothFurther,
  bothWhole,
  olderRight,
  newerRight,
];
