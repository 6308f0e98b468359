/** Letters of every script: the fonts for Chinese, Japanese and Korean, where lines break, the order of both directions. */
export { type EastAsianFont, type EastAsianWeight, openEastAsianFonts } from './eastAsianFonts.ts';
export { unspacedBreaks } from './lineBreaks.ts';
export { fromLeftToRight, levelOf, mirrored, type WritingOrder, writingOrderOf } from './writingOrder.ts';
