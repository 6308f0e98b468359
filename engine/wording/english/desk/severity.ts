/** The severities of a flag, and a plain note that has none: inside a sentence, to begin a label, and what each means. */
export const severity = {
  keep: 'keep',
  prefer: 'prefer',
  adjust: 'adjust',
  correct: 'correct',
  stop: 'stop',
  fine: 'fine',
  note: 'note',
  keepTitle: 'Keep',
  preferTitle: 'Prefer',
  adjustTitle: 'Adjust',
  correctTitle: 'Correct',
  stopTitle: 'Stop',
  fineTitle: 'Fine',
  noteTitle: 'Note',
  keepMeans: 'praise',
  preferMeans: 'fine tuning',
  adjustMeans: 'works, costs something',
  correctMeans: 'defeats the purpose',
  stopMeans: 'unsafe',
  noteMeans: 'judges nothing',
  key: 'What the marks mean',
} as const;

export type SeverityMessageId = keyof typeof severity;
