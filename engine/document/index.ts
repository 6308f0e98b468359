/** Documents: one model of headings, paragraphs, lists, tables and notices; and every text format written from it. */
export type { Block, Inline, RacksideDocument } from './document.ts';
export { type InLanguage, inLanguage } from './inLanguage.ts';
export { emphasis, plainText, stamp, strong, text } from './inlines.ts';
export { sentence, tidy, upperFirst, withinSentence } from './tidy.ts';
export { toHtml } from './toHtml.ts';
export { toMarkdown } from './toMarkdown.ts';
export { toText } from './toText.ts';
