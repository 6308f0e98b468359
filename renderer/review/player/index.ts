/** Playing clips and stepping through them exactly, by the frame table. */
export { createClipPlayer } from './clipPlayer.ts';
export { type ClipTimes, clipTimes } from './clipTimes.ts';
export { createPlayer, type Loop, type Player, type PlayerOptions, type PlayerView } from './player.ts';
export { speeds, stepSpeed } from './speeds.ts';
export type { FrameSource, Later, Picture, StillPicture, VideoLike } from './videoLike.ts';
