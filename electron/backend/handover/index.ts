/**
 * The handover: what leaves the desk as a folder or a zip, from a library or a review file, and how one is taken in; its
 * stills, annotated clips and loops; covers for those who must not be known.
 */

export { type AnnotatedClipOptions, renderAnnotatedClip } from './clips/annotatedClip.ts';
export type { CardWords } from './clips/card.ts';
export { type RepLoopOptions, renderRepLoop } from './clips/repLoop.ts';
export type { AtNotes, Timeline } from './clips/timeline.ts';
export { type Delivered, deliverHandover } from './deliverHandover.ts';
export { uniqueSlugs } from './fileNames.ts';
export { fileSource, type ReviewFile } from './fileSource.ts';
export type { HandoverSource, HandoverWork } from './handoverSource.ts';
export { librarySource } from './librarySource.ts';
export { type BodyAtFrame, bodyReader } from './overlay/bodyAtFrame.ts';
export type { AngleWords, ClipToShow, PictureNote } from './picture.ts';
export { angleWords, pictureNote } from './pictures/pictureNote.ts';
export { renderStills, type Still, type StillsOptions } from './pictures/stills.ts';
export { namesOf, picturesOf, type SeenInClips, seenInClips } from './seenInClips.ts';
export { type ClipOfHandover, writeClips } from './writeClips.ts';
