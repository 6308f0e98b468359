import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { annotationJson } from '../../../../engine/annotation/annotationPage.ts';
import type { RacksideDocument } from '../../../../engine/document/document.ts';
import type { Edition } from '../../../../engine/edition/edition.ts';
import type { FileInFolder, FileKind } from '../../../../engine/handover/handoverFolder.ts';
import { repChapters, sheetSubRip, sheetWebVtt } from '../../../../engine/notes/noteFiles.ts';
import type { Review } from '../../../../engine/review/review.ts';
import { writeReview } from '../../../../engine/review/writeReview.ts';
import { measuresCsv, sheetCsv } from '../../../../engine/sheet/csv.ts';
import type { HandoverOptions } from '../../../contract/handover.ts';
import { renderDocument } from '../../documents/renderReviewDocument.ts';
import type { StillFile } from './clipParts.ts';
import type { NoteNames } from './fileNames.ts';
import { reviewName } from './manifest.ts';
import { picturesOf } from './seenInClips.ts';

/** What the documents are written from, when the clips are done. */
export type DocumentsToWrite = {
  /** With what is known of the clips' files. */
  readonly edition: Edition;
  /** The review in the time of the clips in the folder. */
  readonly played: Review;
  /** The review as another coach's Rackside imports it. */
  readonly kept: Review;
  readonly stills: ReadonlyMap<string, StillFile>;
  /** Names of the files with a clip's notes, by the clip's id. */
  readonly notes: ReadonlyMap<string, NoteNames>;
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
  const { edition, played, kept, stills, paper, version, handedAt, nextFilming, clipFiles } = content;
  const { review, catalogue, measures } = edition;
  const pictures = picturesOf(stills);
  const files: Written[] = [];

  const put = async (file: Written, content: Uint8Array | string) => {
    const target = path.join(folder, file.name);
    await mkdir(path.dirname(target), { recursive: true });
    await writeFile(target, content, { flag: 'wx' });
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

  const { document: letter } = edition.letter(stills);
  await putDocument(letter, 'letter', { kind: 'letter', formats: ['html', 'pdf', 'md', 'txt'] });
  await putDocument(edition.sheet(content.sheet, stills), 'sheet', { kind: 'sheet', formats: ['html', 'pdf'] });
  await putDocument(edition.breakdown(), 'breakdown', { kind: 'breakdown', formats: ['html', 'pdf'] });
  await putDocument(edition.filmingCard(), 'filming-card', { kind: 'filmingCard', formats: ['html', 'pdf'] });
  const filming = { date: nextFilming, stamp: handedAt, sequence: version - 1, reminderHours: 6 };
  await put({ name: 'next-filming.ics', kind: 'calendar' }, edition.filmingDate(filming));
  for (const [clipId, { webVtt, subRip, chapters }] of content.notes) {
    await put({ name: webVtt, kind: 'notes', clipId }, sheetWebVtt(played, catalogue, { clipId }));
    await put({ name: subRip, kind: 'notes', clipId }, sheetSubRip(played, catalogue, { clipId }));
    await put({ name: chapters, kind: 'chapters', clipId }, repChapters(played, catalogue, { clipId }));
  }
  await put({ name: 'sheet.csv', kind: 'data' }, sheetCsv(review, catalogue));
  await put({ name: 'sheet.json', kind: 'data' }, edition.sheetJson(stills));
  if (measures.size > 0)
    await put({ name: 'measures.csv', kind: 'measures' }, measuresCsv(review, catalogue, measures));
  const annotations = annotationJson(played, catalogue, { files: clipFiles, created: handedAt });
  await put({ name: 'annotations.jsonld', kind: 'data' }, annotations);
  await put({ name: reviewName, kind: 'data' }, writeReview(kept));
  return files;
}
