import type { CommandId } from '../../engine/wording/english/desk/commands.ts';
import type { ReasonId } from '../../engine/wording/english/desk/reasons.ts';
import {
  type Availability,
  allOf,
  available,
  type Command,
  type CommandContext,
  unavailable,
} from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { sayReasons } from '../words/sayReasons.ts';
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
  player === null ? unavailable(sayReasons('notPlayable')) : available;

type Playing = Command<PlayingContext>;
const shared = { group: 'picture', readOnly: 'allowed', when: canPlay } as const;

export const play: Playing = {
  ...shared,
  ...named('play'),
  keys: ['Space'],
  run: ({ player }) => player?.toggle(),
};

export const playBackwards: Playing = {
  ...shared,
  ...named('playBackwards'),
  keys: ['Shift+Space'],
  run: ({ player, playing }) => (playing === 'backwards' ? player?.pause() : player?.playBackwards()),
};

const step = (id: CommandId, key: string, frames: number): Playing => ({
  ...shared,
  ...named(id),
  keys: [key],
  run: ({ player }, press) => player?.step(frames, press),
});

export const frameBack = step('frameBack', 'Shift+ArrowLeft', -1);
export const frameOn = step('frameOn', 'Shift+ArrowRight', 1);
const framesBack = step('framesBack', 'PageUp', -10);
const framesOn = step('framesOn', 'PageDown', 10);

const changeSpeed = (
  direction: 'slower' | 'faster',
  key: string,
  last: number | undefined,
  atTheEnd: ReasonId,
): Playing => ({
  ...shared,
  ...named(direction),
  keys: [key],
  when: (context) => allOf(canPlay(context), context.speed === last ? unavailable(sayReasons(atTheEnd)) : available),
  run: ({ speed, setSpeed }) => setSpeed(stepSpeed(speed, direction)),
});

const slower = changeSpeed('slower', 'Shift+ArrowDown', speeds[0], 'slowest');
const faster = changeSpeed('faster', 'Shift+ArrowUp', speeds.at(-1), 'fastest');

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
