import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { annotationJson } from '../../../../engine/annotation/annotationPage.ts';
import { writeBreakdown } from '../../../../engine/breakdown/writeBreakdown.ts';
import { filmingDate } from '../../../../engine/calendar/filmingDate.ts';
import type { RacksideDocument } from '../../../../engine/document/document.ts';
import { gradeSession } from '../../../../engine/grading/gradeSession.ts';
import type { FileInFolder, FileKind } from '../../../../engine/handover/handoverFolder.ts';
import { planLetter } from '../../../../engine/letter/planLetter.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { Review } from '../../../../engine/review/review.ts';
import { writeReview } from '../../../../engine/review/writeReview.ts';
import { measuresCsv } from '../../../../engine/sheet/measuresCsv.ts';
import { repChapters } from '../../../../engine/sheet/repChapters.ts';
import { sheetCsv } from '../../../../engine/sheet/sheetCsv.ts';
import { sheetJson } from '../../../../engine/sheet/sheetJson.ts';
import { sheetSubRip } from '../../../../engine/sheet/sheetSubRip.ts';
import { sheetWebVtt } from '../../../../engine/sheet/sheetWebVtt.ts';
import { writeSheet } from '../../../../engine/sheet/writeSheet.ts';
import type { HandoverOptions } from '../../../contract/handover.ts';
import { renderDocument } from '../../documents/renderReviewDocument.ts';
import type { HandoverSource } from '../source/handoverSource.ts';
import { cardOfMissing, filmAsks } from './filmNext.ts';
import { reviewName } from './manifest.ts';
import { namesOf, picturesOf } from './seenInClips.ts';
import type { StillFile } from './writtenClip.ts';

/** What the documents are written from, when the clips are done. */
export type DocumentsToWrite = {
  readonly source: HandoverSource;
  /** The review with what is known of its files. */
  readonly review: Review;
  /** The review in the time of the clips in the folder. */
  readonly played: Review;
  /** The review as another desk takes it in. */
  readonly kept: Review;
  readonly measures: ReadonlyMap<string, SetMeasurement>;
  readonly stills: ReadonlyMap<string, StillFile>;
  /** Names of the clips in the folder, without their ending, by the clip's id. */
  readonly notes: ReadonlyMap<string, string>;
  /** Names of the clips in the folder, by the clip's id. */
  readonly clipFiles: ReadonlyMap<string, string>;
  readonly sheet: HandoverOptions['sheet'];
  readonly paper: HandoverOptions['paper'];
  readonly version: number;
  readonly handedAt: string;
  readonly nextFilming: string;
};

type Written = { readonly name: string; readonly kind: FileKind; readonly clipId?: string };

/** Writes every document of a handover into its folder; gives the files in the order they are to be shown. */
export async function writeDocuments(folder: string, content: DocumentsToWrite): Promise<readonly FileInFolder[]> {
  const { source, review, played, kept, measures, stills, paper, version, handedAt, nextFilming, clipFiles } = content;
  const { catalogue } = source;
  const grade = gradeSession(review, catalogue);
  const pictures = picturesOf(stills);
  const extras = { measures, stills: namesOf(stills) };
  const letter = source.letter(stills);
  const said = filmAsks(letter);
  const film = planLetter(review, grade, catalogue, source.earlier).film;
  const files: Written[] = [];

  const put = async (file: Written, content: Uint8Array | string) => {
    const target = path.join(folder, file.name);
    await mkdir(path.dirname(target), { recursive: true });
    await writeFile(target, content);
    files.push(file);
  };
  const putDocument = async (
    document: RacksideDocument,
    name: string,
    { kind, formats }: { readonly kind: FileKind; readonly formats: readonly ('html' | 'pdf' | 'md' | 'txt')[] },
  ) => {
    for (const format of formats) {
      await put({ name: `${name}.${format}`, kind }, await renderDocument(document, format, { paper, pictures }));
    }
  };

  await putDocument(letter, 'letter', { kind: 'letter', formats: ['html', 'pdf', 'md', 'txt'] });
  const sheet = writeSheet(review, grade, catalogue, { ...extras, length: content.sheet });
  await putDocument(sheet, 'sheet', { kind: 'sheet', formats: ['html', 'pdf'] });
  const breakdown = writeBreakdown(review, grade, catalogue);
  await putDocument(breakdown, 'breakdown', { kind: 'breakdown', formats: ['html', 'pdf'] });
  const card = cardOfMissing(review, catalogue, { film, said });
  await putDocument(card, 'filming-card', { kind: 'filmingCard', formats: ['html', 'pdf'] });
  const filming = { date: nextFilming, stamp: handedAt, sequence: version - 1, reminderHours: 6, asks: said.asks };
  await put({ name: 'next-filming.ics', kind: 'calendar' }, filmingDate(review, catalogue, filming));
  for (const [clipId, name] of content.notes) {
    await put({ name: `${name}.vtt`, kind: 'notes', clipId }, sheetWebVtt(played, catalogue, { clipId }));
    await put({ name: `${name}.srt`, kind: 'notes', clipId }, sheetSubRip(played, catalogue, { clipId }));
    await put({ name: `${name}-reps.vtt`, kind: 'chapters', clipId }, repChapters(played, catalogue, { clipId }));
  }
  await put({ name: 'sheet.csv', kind: 'data' }, sheetCsv(review, catalogue));
  await put({ name: 'sheet.json', kind: 'data' }, sheetJson(review, grade, catalogue, extras));
  if (measures.size > 0)
    await put({ name: 'measures.csv', kind: 'measures' }, measuresCsv(review, catalogue, measures));
  const annotations = annotationJson(played, catalogue, { files: clipFiles, created: handedAt });
  await put({ name: 'annotations.jsonld', kind: 'data' }, annotations);
  await put({ name: reviewName, kind: 'data' }, writeReview(kept));
  return files;
}
