import { type InLanguage, inLanguage } from '../document/inLanguage.ts';
import { type Language, localeOf } from '../language/language.ts';
import type { Severity } from '../rubric/rubric.ts';
import type { SheetMessageId } from '../wording/english/sheet.ts';
import { type Say, sayerOf, sheetWording } from '../wording/wordings.ts';
import type { FlagRow } from './flagRows.ts';

/** The strokes of a severity: the heavier the remark, the more of them; praise is a plus. Always shown beside the word. */
export const strokes = {
  keep: '+',
  prefer: '|',
  adjust: '||',
  correct: '|||',
  stop: '||||',
} as const satisfies Readonly<Record<Severity, string>>;

/** The sheet's words and figures in one language. */
export type SheetLanguage = {
  readonly language: Language;
  readonly say: Say<SheetMessageId>;
  readonly format: InLanguage;
  /** A severity as word and strokes: "correct |||". */
  readonly severityText: (severity: Severity) => string;
  /** The same where a line may break: word and strokes stay together. */
  readonly severityLine: (severity: Severity) => string;
};

/** The sheet's language for a tag. */
export function sheetLanguage(language: Language): SheetLanguage {
  const say = sayerOf(sheetWording, language);
  return {
    language,
    say,
    format: inLanguage(localeOf[language]),
    severityText: (severity) => `${say('severityWord', { severity })} ${strokes[severity]}`,
    severityLine: (severity) => `${say('severityWord', { severity })}\u00A0${strokes[severity]}`,
  };
}

/** Which reps a flag speaks of: "Rep 2", "Reps 1, 3", "Whole set". */
export function sayReps({ reps }: FlagRow, { say }: SheetLanguage): string {
  if (reps === null) return say('inSet');
  return say('inReps', { count: reps.length, reps: reps.join(', ') });
}
