/** The handover: the page that a folder of clips, letter and sheet opens with. */
export type { BodyOnPage, ClipInFolder, FileInFolder, FileKind, HandoverFolder } from './handoverFolder.ts';
export { writeIndexPage } from './indexPage.ts';
