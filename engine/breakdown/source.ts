import type { HeldBack } from '../cautions/heldBack.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { SheetLanguage } from '../sheet/sheetLanguage.ts';
import type { BreakdownMessageId } from '../wording/english/grade.ts';
import type { Say } from '../wording/wordings.ts';

/** What every part of a breakdown is written from. */
export type Source = {
  readonly catalogue: Catalogue;
  readonly sheet: SheetLanguage;
  /** What was done of an entry, in words; '' where nothing is known of it. */
  readonly workOfEntry: (entryId: string) => string;
  /** What waits while something hurts. */
  readonly held: HeldBack;
  readonly say: Say<BreakdownMessageId>;
};
