import type { StageMessageId } from '../../../engine/wording/english/desk/stage.ts';
import type { Command } from '../../commands/command.ts';
import { framingState } from '../state/framingState.ts';
import { narrationState } from '../state/narrationState.ts';
import { coverState, drawingState, setUpState } from '../state/pictureTools.ts';
import { type Layer, layers, layersState } from '../state/viewState.ts';
import { dividingCommands } from './arranging.ts';
import { layCameras, otherEarlier, otherLater, partCameras, sameMoment, showOtherCamera } from './cameras.ts';
import { cover, leaveCovering } from './covering.ts';
import { draw, leaveDrawing } from './drawing.ts';
import { frame, leaveFraming, mirror, splitClip, trimEnd, trimStart, turnLeft, turnRight } from './framing.ts';
import { closer, further, panCommands, stripCloser, stripFurther, wholePicture } from './looking.ts';
import { repCommands } from './markingReps.ts';
import { layerCommands } from './measuring.ts';
import { leaveNarrating, narrate } from './narrating.ts';
import type { ReviewContext } from './reviewContext.ts';
import { leaveSettingUp, setUp } from './settingUp.ts';

/** A line of the menu beside the picture's controls: a command, and where it switches something, whether that is on. */
export type MenuLine = {
  readonly command: Command<ReviewContext>;
  /** Reads what `ReviewDesk.subscribe` watches; without it the line is no switch. */
  readonly isOn?: (context: ReviewContext) => boolean;
  /** Pressed several times on end, so that the menu stays. */
  readonly again?: true;
  /** What the line does while it is on, in place of its command. */
  readonly whileOn?: (context: ReviewContext) => void;
};

type MenuGroup = { readonly title: StageMessageId; readonly lines: readonly MenuLine[] };

const layer = (shown: Layer): MenuLine => ({
  command: layerCommands[shown],
  isOn: () => !layersState.getState().hidden.includes(shown),
});

/** Everything about the picture that isn't worth a button of its own, in the order of the menu. */
export const pictureMenu: readonly MenuGroup[] = [
  {
    title: 'markReps',
    lines: repCommands.map((command) => ({ command })),
  },
  {
    title: 'tools',
    lines: [
      { command: draw, isOn: () => drawingState.getState().drawing === 'on', whileOn: leaveDrawing },
      { command: cover, isOn: () => coverState.getState().covering === 'on', whileOn: leaveCovering },
      {
        command: narrate,
        isOn: () => narrationState.getState().narrating === 'on',
        whileOn: (context) => void leaveNarrating(context),
      },
      { command: setUp, isOn: () => setUpState.getState().settingUp === 'on', whileOn: leaveSettingUp },
      { command: frame, isOn: () => framingState.getState().framing === 'on', whileOn: leaveFraming },
      ...[turnLeft, turnRight].map((command) => ({ command })),
      { command: mirror, isOn: ({ stage }) => stage?.clip.framing?.mirrored === true },
      ...[trimStart, trimEnd, splitClip].map((command) => ({ command })),
    ],
  },
  {
    title: 'cameras',
    lines: [layCameras, sameMoment, showOtherCamera, otherEarlier, otherLater, partCameras].map((command) => ({
      command,
    })),
  },
  { title: 'layers', lines: layers.map(layer) },
  {
    title: 'zoom',
    lines: [closer, further, wholePicture, ...panCommands, stripCloser, stripFurther].map((command) => ({
      command,
      again: true as const,
    })),
  },
  { title: 'pictureWidth', lines: dividingCommands.map((command) => ({ command, again: true as const })) },
];
