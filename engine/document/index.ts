/** Documents: one model of headings, paragraphs, lists, tables, pictures and notices; and every text format written from it. */
export { type Direction, directionOf, hasRightToLeft } from './direction.ts';
export type { Block, Inline, Picture, RacksideDocument, Table } from './document.ts';
export { escapeHtml } from './escapeHtml.ts';
export { folderAddress } from './folderAddress.ts';
export { type BesidePicture, type BlockGroup, groupBlocks, leadsOn } from './groupBlocks.ts';
export { type InLanguage, inLanguage } from './inLanguage.ts';
export { directionHtml, wordsHtml } from './inlineHtml.ts';
export { emphasis, plainText, stamp, strong, text } from './inlines.ts';
export { sentence, tidy, upperFirst, withinSentence } from './tidy.ts';
export { toHtml } from './toHtml.ts';
export { toMarkdown } from './toMarkdown.ts';
export { toText } from './toText.ts';
