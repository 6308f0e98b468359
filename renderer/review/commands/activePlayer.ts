import type { Player } from '../../player/player.ts';

let held: Player | null = null;

/** The stage hands over its player while a clip is on it. */
export const setActivePlayer = (player: Player | null): void => {
  held = player;
};

/** The player of the clip on the stage; null while none can play. */
export const currentPlayer = (): Player | null => held;
