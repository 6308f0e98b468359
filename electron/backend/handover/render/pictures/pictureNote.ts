import { directionOf } from '../../../../../engine/document/direction.ts';
import { sentence, upperFirst } from '../../../../../engine/document/tidy.ts';
import type { Language } from '../../../../../engine/language/language.ts';
import type { FlagRow } from '../../../../../engine/sheet/flagRows.ts';
import { sheetLanguage } from '../../../../../engine/sheet/sheetLanguage.ts';
import { frameAtUs } from '../../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import { sayerOf } from '../../../../../engine/wording/say.ts';
import { startPageWording } from '../../../../../engine/wording/wordings.ts';
import type { AngleWords, PictureNote } from '../picture.ts';

/** Marks around text that runs from right to left, which nothing that is painted needs. */
const isolates = /[\u2068\u2069]/g;

/** The words beside the angles. */
export function angleWords(language: Language): AngleWords {
  const say = sayerOf(startPageWording, language);
  return { knee: say('knee'), trunk: say('trunk') };
}

/** A remark of the sheet as its clip's pictures show it; null when it has no time in the clip. */
export function pictureNote(row: FlagRow, table: FrameTable, language: Language): PictureNote | null {
  const frame = row.frame ?? (row.us === null ? null : frameAtUs(table, Math.round(row.us)));
  if (frame === null || frame < 0 || frame >= table.ticks.length) return null;
  const { say } = sheetLanguage(language);
  const where = row.reps === null ? say('inSet') : say('inReps', { count: row.reps.length, reps: row.reps });
  return {
    frame,
    weight: row.weight,
    heading: [say('weightWord', { weight: row.weight }), row.criterionName, where].join(' · '),
    words: [row.seen, row.note, row.cue]
      .filter((text) => text.trim() !== '')
      .map((text) => upperFirst(sentence(text).replace(isolates, '')))
      .reduce((before, words) => joined(before, words), ''),
  };
}

/** One after the other; on a line of its own what is read the other way. */
function joined(before: string, words: string): string {
  if (before === '') return words;
  const last = before.slice(before.lastIndexOf('\n') + 1);
  return `${before}${directionOf(last) === directionOf(words) ? ' ' : '\n'}${words}`;
}
