import type { CommandId } from '../../../engine/wording/english/desk/commands.ts';
import type { ReasonId } from '../../../engine/wording/english/desk/reasons.ts';
import { type Availability, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { repAtFrame } from '../../player/repFrames.ts';
import { screenState } from '../../state/screenState.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { type Point, zoomStep } from '../model/pictureGeometry.ts';
import { playerState } from '../state/playerState.ts';
import { stripState, zoomState } from '../state/viewState.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

const panStepPx = 60;

type Looking = Command<ReviewContext>;
const shared = { group: 'picture', readOnly: 'allowed', when: isReadable } as const;

const isZoomed = (otherwise: ReasonId) => (): Availability =>
  zoomState.getState().zoom.scale > 1 ? available : unavailable(sayReasons(otherwise));

/** Hides the rep before, when the key that shows it is let go. */
export const hideGhost = (): void => playerState.setState({ ghost: 'hidden' });

const ghost: Looking = {
  ...shared,
  ...named('ghost'),
  keys: ['H'],
  palette: 'unlisted',
  run: () => playerState.setState({ ghost: 'shown' }),
};

export const closer: Looking = {
  ...shared,
  ...named('closer'),
  keys: ['+', '='],
  run: () => zoomState.getState().zoomBy(zoomStep),
};

export const further: Looking = {
  ...shared,
  ...named('further'),
  keys: ['-'],
  when: isZoomed('wholePicture'),
  run: () => zoomState.getState().zoomBy(1 / zoomStep),
};

export const wholePicture: Looking = {
  ...shared,
  ...named('wholePicture'),
  keys: ['0'],
  when: isZoomed('wholePicture'),
  run: () => zoomState.getState().fit(),
};

const strip = (id: CommandId, factor: number, key: string): Looking => ({
  ...shared,
  ...named(id),
  keys: [key],
  run: () => stripState.getState().zoom(factor),
});

export const stripCloser = strip('stripCloser', 2, 'Mod+PageUp');
export const stripFurther = strip('stripFurther', 0.5, 'Mod+PageDown');

const pan = (id: CommandId, by: Point, key: string): Looking => ({
  ...shared,
  ...named(id),
  keys: [key],
  when: isZoomed('zoomFirst'),
  run: () => zoomState.getState().pan(by),
});

export const compare: Looking = {
  ...shared,
  ...named('compare'),
  keys: ['Shift+C'],
  run: ({ sessionId, stage, player }) => {
    if (stage === null || stage.tables === null) return;
    const rep = repAtFrame(stage.clip.reps, player?.frame() ?? 0, stage.tables.table);
    screenState.getState().go({ kind: 'compare', sessionId, clipId: stage.clip.id, rep });
  },
};

/** Moving a picture that is shown closer. */
export const panCommands: readonly Looking[] = [
  pan('panLeft', { x: panStepPx, y: 0 }, 'Mod+ArrowLeft'),
  pan('panRight', { x: -panStepPx, y: 0 }, 'Mod+ArrowRight'),
  pan('panUp', { x: 0, y: panStepPx }, 'Mod+ArrowUp'),
  pan('panDown', { x: 0, y: -panStepPx }, 'Mod+ArrowDown'),
];

/** Looking at the picture: closer, at its sides, beside another. */
export const lookingCommands: readonly Looking[] = [
  ghost,
  closer,
  further,
  wholePicture,
  stripCloser,
  stripFurther,
  ...panCommands,
  compare,
];
