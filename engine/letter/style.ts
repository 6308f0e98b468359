import type { Language } from '../language/language.ts';

/** How a coach's letter sounds; a self-review has one tone. */
export const tones = ['plain', 'warm', 'direct'] as const;
export type Tone = (typeof tones)[number];

export type LetterStyle = {
  /** Short: the grade, one thing to keep, what was seen and the cue of each priority, the cautions. */
  readonly length: 'full' | 'short';
  readonly tone: Tone;
  readonly language: Language;
};

/** A picture of a remark's moment: a file beside the letter by its relative name, or the picture as a data URL. */
export type Still = { readonly source: string; readonly widthPx: number; readonly heightPx: number };

/** Stills by the id of the flag each one shows. */
export type Stills = ReadonlyMap<string, Still>;
