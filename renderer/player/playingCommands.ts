import {
  type Availability,
  allOf,
  available,
  type Command,
  type CommandContext,
  unavailable,
} from '../commands/command.ts';
import type { Player } from './player.ts';

/** Speeds to choose from, slowest first. */
export const speeds = [0.1, 0.25, 0.5, 0.75, 1, 1.5, 2] as const;

/** The next slower or faster speed; the ends stay where they are. */
export function stepSpeed(speed: number, direction: 'slower' | 'faster'): number {
  const next = direction === 'faster' ? speeds.find((s) => s > speed) : speeds.findLast((s) => s < speed);
  return next ?? speed;
}

/** What a screen with a player tells the commands that move it. */
export type PlayingContext = CommandContext & {
  /** null while no clip can play. */
  readonly player: Player | null;
  readonly playing: 'no' | 'forwards' | 'backwards';
  readonly speed: number;
  readonly setSpeed: (speed: number) => void;
};

/** Whether the clip on screen can play. */
export const canPlay = ({ player }: Pick<PlayingContext, 'player'>): Availability =>
  player === null ? unavailable('The clip can’t be played yet; try again when it appears.') : available;

type Playing = Command<PlayingContext>;
const shared = { group: 'Picture', readOnly: 'allowed', when: canPlay } as const;

export const play: Playing = {
  ...shared,
  id: 'play',
  label: 'Play or pause',
  keys: ['Space'],
  button: 'Play',
  run: ({ player }) => player?.toggle(),
};

export const playBackwards: Playing = {
  ...shared,
  id: 'playBackwards',
  label: 'Play backwards',
  keys: ['Shift+Space'],
  button: 'Play backwards',
  run: ({ player, playing }) => (playing === 'backwards' ? player?.pause() : player?.playBackwards()),
};

const step = (face: Pick<Playing, 'id' | 'label' | 'keys' | 'button'>, frames: number): Playing => ({
  ...shared,
  ...face,
  run: ({ player }, press) => player?.step(frames, press),
});

export const frameBack = step(
  { id: 'frameBack', label: 'One frame back', keys: ['Shift+ArrowLeft'], button: 'One frame back' },
  -1,
);
export const frameOn = step(
  { id: 'frameOn', label: 'One frame on', keys: ['Shift+ArrowRight'], button: 'One frame on' },
  1,
);
const framesBack = step({ id: 'framesBack', label: 'Ten frames back', keys: ['PageUp'] }, -10);
const framesOn = step({ id: 'framesOn', label: 'Ten frames on', keys: ['PageDown'] }, 10);

const changeSpeed = (
  face: Pick<Playing, 'id' | 'label' | 'keys'>,
  direction: 'slower' | 'faster',
  last: number | undefined,
  atTheEnd: string,
): Playing => ({
  ...shared,
  ...face,
  when: (context) => allOf(canPlay(context), context.speed === last ? unavailable(atTheEnd) : available),
  run: ({ speed, setSpeed }) => setSpeed(stepSpeed(speed, direction)),
});

const slower = changeSpeed(
  { id: 'slower', label: 'Slower', keys: ['Shift+ArrowDown'] },
  'slower',
  speeds[0],
  'This is the slowest speed.',
);
const faster = changeSpeed(
  { id: 'faster', label: 'Faster', keys: ['Shift+ArrowUp'] },
  'faster',
  speeds.at(-1),
  'This is the fastest speed.',
);

/** Playing, stepping and speed. */
export const playingCommands: readonly Playing[] = [
  play,
  frameBack,
  frameOn,
  framesBack,
  framesOn,
  slower,
  faster,
  playBackwards,
];
