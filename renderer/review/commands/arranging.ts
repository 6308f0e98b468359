import { type Availability, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { layoutState, type PictureShape, shapeOf } from '../state/layoutState.ts';
import { clearBeside, menuState } from '../state/panelState.ts';
import { stopDrawing } from '../state/pictureTools.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

/** What one key press moves the divider by, as a share of the window's width. */
export const dividerStep = 0.03;

const shapeOnStage = ({ data, stage }: ReviewContext): PictureShape =>
  shapeOf(data?.media.find(({ clipId }) => clipId === stage?.clip.id) ?? { width: 0, height: 0 });

type Arranging = Command<ReviewContext>;
const shared = { group: 'picture', readOnly: 'allowed', when: isOnStage } as const;

export const largePicture: Arranging = {
  ...shared,
  ...named('largePicture'),
  keys: ['Z'],
  run: () => {
    const { large, setLarge } = layoutState.getState();
    clearBeside();
    stopDrawing();
    setLarge(!large);
  },
};

const isDivided = (context: ReviewContext): Availability =>
  layoutState.getState().large ? unavailable(sayReasons('pictureIsLarge')) : isOnStage(context);

const move = (id: 'pictureNarrower' | 'pictureWider', by: number, key: string): Arranging => ({
  ...shared,
  ...named(id),
  keys: [key],
  when: isDivided,
  run: (context) => {
    const { shownShare, setShare } = layoutState.getState();
    setShare(shapeOnStage(context), shownShare + by);
  },
});

const pictureByItself: Arranging = {
  ...shared,
  ...named('pictureByItself'),
  keys: [],
  when: isDivided,
  run: (context) => layoutState.getState().setShare(shapeOnStage(context), null),
};

/** Dividing the window between the picture and the scorecard. */
export const dividingCommands: readonly Arranging[] = [
  move('pictureNarrower', -dividerStep, '<'),
  move('pictureWider', dividerStep, '>'),
  pictureByItself,
];

export const openPictureMenu: Arranging = {
  ...shared,
  ...named('pictureMenu'),
  keys: ['Shift+P'],
  run: () => {
    layoutState.getState().setLarge(false);
    menuState.setState({ open: true });
  },
};

/** How much of the window the picture has, and the menu of what is rarely asked of it. */
export const arrangingCommands: readonly Arranging[] = [largePicture, ...dividingCommands, openPictureMenu];
