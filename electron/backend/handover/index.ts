/** The pictures that leave the desk: stills, annotated clips, loops of a rep; covers for those who must not be known. */

export { type AnnotatedClipOptions, renderAnnotatedClip } from './clips/annotatedClip.ts';
export type { CardWords } from './clips/card.ts';
export { type RepLoopOptions, renderRepLoop } from './clips/repLoop.ts';
export type { AtNotes } from './clips/timeline.ts';
export { type Box, boxAt, boxSchema, type Cover, coverSchema } from './covers/cover.ts';
export { headCover } from './covers/headCover.ts';
export { type BodyAtFrame, bodyReader } from './overlay/bodyAtFrame.ts';
export type { AngleWords, ClipToShow, PictureNote } from './picture.ts';
export { angleWords, pictureNote } from './pictures/pictureNote.ts';
export { renderStills, type Still, type StillsOptions } from './pictures/stills.ts';
