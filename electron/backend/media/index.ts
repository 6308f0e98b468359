/** Footage: what a clip is, its pictures, a playable copy. The only place that runs ffmpeg and ffprobe. */
export { encodeJpegs, type JpegsToEncode } from './encodeJpegs.ts';
export { encodeVideo, type FrameRate, type VideoToEncode } from './encodeVideo.ts';
export { findH264Encoder, type H264Encoder } from './h264Encoder.ts';
export { lumaWeights, type PictureColours, readPictureColours } from './pictureColours.ts';
export type { FilmstripOptions, PosterOptions } from './pictures.ts';
export { makeFilmstrip, makePoster } from './pictures.ts';
export type { ClipProbe, WorkOptions } from './probe.ts';
export { probeClip } from './probe.ts';
export type { ProxyOptions } from './proxy.ts';
export { makeProxy } from './proxy.ts';
export { type ChosenOptions, readChosenPictures } from './readChosenPictures.ts';
export type { ReadOptions, ReadPicture } from './readPictures.ts';
export { bytesOf, readPictures } from './readPictures.ts';
export { makeSoundtrack, type SoundPiece } from './soundtrack.ts';
export type { MediaTool, MediaTools } from './tools.ts';
export { describeMediaTools, findMediaTools } from './tools.ts';
export type { PictureSize } from './upright.ts';
export { uprightSize } from './upright.ts';
