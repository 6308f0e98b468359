import type { Player } from '../../../renderer/player/player.ts';

/** A player that shows a frame and remembers what it was asked. */
export type FakePlayer = Player & { readonly log: readonly string[] };

/** A player that stays at a frame until it is sent elsewhere. */
export function fakePlayer(at: number): FakePlayer {
  const log: string[] = [];
  let frame = at;
  return {
    log,
    play: () => log.push('play'),
    playBackwards: () => log.push('play backwards'),
    follow: () => log.push('follow'),
    pause: () => log.push('pause'),
    toggle: () => log.push('toggle'),
    seekTo: (to) => {
      frame = to;
      log.push(`seek ${to}`);
    },
    step: (frames, key) => log.push(`step ${frames} ${key}`),
    setSpeed: (speed) => log.push(`speed ${speed}`),
    setLoop: (loop) => log.push(loop === null ? 'no loop' : `loop ${loop.first}-${loop.last}`),
    frame: () => frame,
    dispose: () => log.push('dispose'),
  };
}
