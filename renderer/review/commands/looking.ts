import { type Availability, available, type Command, unavailable } from '../../commands/command.ts';
import { repAtFrame } from '../../player/repFrames.ts';
import { screenState } from '../../state/screenState.ts';
import { type Point, zoomStep } from '../model/pictureGeometry.ts';
import { playerState } from '../state/playerState.ts';
import { stripState, zoomState } from '../state/viewState.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

const panStepPx = 60;

type Looking = Command<ReviewContext>;
const shared = { group: 'Picture', readOnly: 'allowed', when: isReadable } as const;

const isZoomed = (otherwise: string) => (): Availability =>
  zoomState.getState().zoom.scale > 1 ? available : unavailable(otherwise);

const wholeAlready = isZoomed('The whole picture is showing already.');

/** Hides the rep before, when the key that shows it is let go. */
export const hideGhost = (): void => playerState.setState({ ghost: 'hidden' });

const ghost: Looking = {
  ...shared,
  id: 'ghost',
  label: 'While held: the rep before, at the same phase',
  keys: ['H'],
  palette: 'unlisted',
  run: () => playerState.setState({ ghost: 'shown' }),
};

export const closer: Looking = {
  ...shared,
  id: 'closer',
  label: 'Closer',
  keys: ['+', '='],
  button: 'Closer',
  run: () => zoomState.getState().zoomBy(zoomStep),
};

export const further: Looking = {
  ...shared,
  id: 'further',
  label: 'Further away',
  keys: ['-'],
  button: 'Further away',
  when: wholeAlready,
  run: () => zoomState.getState().zoomBy(1 / zoomStep),
};

export const wholePicture: Looking = {
  ...shared,
  id: 'wholePicture',
  label: 'The whole picture',
  keys: ['0'],
  button: 'Whole picture',
  when: wholeAlready,
  run: () => zoomState.getState().fit(),
};

const strip = (id: string, factor: number, key: string, label: string): Looking => ({
  ...shared,
  id,
  label,
  keys: [key],
  run: () => stripState.getState().zoom(factor),
});

const pan = (id: string, by: Point, key: string, side: string): Looking => ({
  ...shared,
  id,
  label: `See more of the ${side}`,
  keys: [key],
  when: isZoomed('The whole picture is showing already: go closer first.'),
  run: () => zoomState.getState().pan(by),
});

export const compare: Looking = {
  ...shared,
  id: 'compare',
  label: 'Beside an earlier clip, at the same phase',
  keys: ['Shift+C'],
  button: 'Compare',
  run: ({ sessionId, stage, player }) => {
    if (stage === null || stage.tables === null) return;
    const rep = repAtFrame(stage.clip.reps, player?.frame() ?? 0, stage.tables.table);
    screenState.getState().go({ kind: 'compare', sessionId, clipId: stage.clip.id, rep });
  },
};

/** Looking at the picture: closer, at its sides, beside another. */
export const lookingCommands: readonly Looking[] = [
  ghost,
  closer,
  further,
  wholePicture,
  strip('stripCloser', 2, 'Mod+PageUp', 'Strip: less of the clip, larger'),
  strip('stripFurther', 0.5, 'Mod+PageDown', 'Strip: more of the clip'),
  pan('panLeft', { x: panStepPx, y: 0 }, 'Mod+ArrowLeft', 'left'),
  pan('panRight', { x: -panStepPx, y: 0 }, 'Mod+ArrowRight', 'right'),
  pan('panUp', { x: 0, y: panStepPx }, 'Mod+ArrowUp', 'top'),
  pan('panDown', { x: 0, y: -panStepPx }, 'Mod+ArrowDown', 'bottom'),
  compare,
];
