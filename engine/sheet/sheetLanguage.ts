import { type InLanguage, inLanguage } from '../document/inLanguage.ts';
import { type Language, localeOf } from '../language/language.ts';
import { type Severity, severities } from '../rubric/rubric.ts';
import type { SheetMessageId } from '../wording/english/sheet.ts';
import { type Say, sayerOf, sheetWording } from '../wording/wordings.ts';
import type { FlagRow } from './flagRows.ts';

/**
 * The mark of a severity, always shown beside its word: the heavier the note, the more strokes; praise is a plus, a stop one
 * cross that can't be taken for strokes.
 */
export const strokes = {
  keep: '+',
  prefer: '|',
  adjust: '||',
  correct: '|||',
  stop: '×',
} as const satisfies Readonly<Record<Severity, string>>;

/** The sheet's words and figures in one language. */
export type SheetLanguage = {
  readonly language: Language;
  readonly say: Say<SheetMessageId>;
  readonly format: InLanguage;
  /** A severity as word and strokes, "correct |||"; of a plain note its word alone. */
  readonly severityText: (severity: Severity | null) => string;
  /** The same where a line may break: word and strokes stay together. */
  readonly severityLine: (severity: Severity | null) => string;
  /** One line that tells what each mark means. */
  readonly severityKey: string;
};

/** The sheet's language for a tag. */
export function sheetLanguage(language: Language): SheetLanguage {
  const say = sayerOf(sheetWording, language);
  const severityWith = (space: string) => (severity: Severity | null) =>
    severity === null ? say('plainNote') : `${say('severityWord', { severity })}${space}${strokes[severity]}`;
  const severityLine = severityWith('\u00A0');
  const means = (severity: Severity) =>
    say('severityMeans', { mark: severityLine(severity), means: say('severityMeaning', { severity }) });
  return {
    language,
    say,
    format: inLanguage(localeOf[language]),
    severityText: severityWith(' '),
    severityLine,
    severityKey: say('severityKey', { marks: severities.map(means).join('\u00A0· ') }),
  };
}

/** Which reps a flag speaks of: "Rep 2", "Reps 1, 3", "Whole set". */
export function sayReps({ reps }: FlagRow, { say }: SheetLanguage): string {
  if (reps === null) return say('inSet');
  return say('inReps', { count: reps.length, reps: reps.join(', ') });
}
