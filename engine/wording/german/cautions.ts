import type { CautionMessageId } from '../english/cautions.ts';

/** Cautions beside what they are read with. */
export const cautions = {
  title: 'Sicherheitshinweise',
  closing: 'Einschätzung anhand des Videos; kein medizinischer Rat.',
} satisfies Readonly<Record<CautionMessageId, string>>;
