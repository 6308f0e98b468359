import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Catalogue } from '../../../../engine/exercises/catalogue.ts';
import { asFilmed, isAsFilmed } from '../../../../engine/framing/framing.ts';
import { framesShown, holds, isWhole } from '../../../../engine/framing/section.ts';
import type { FileInFolder } from '../../../../engine/handover/handoverFolder.ts';
import type { Still } from '../../../../engine/letter/letter.ts';
import type { Clip } from '../../../../engine/review/review.ts';
import type { FlagRow } from '../../../../engine/sheet/flagRows.ts';
import { frameStartUs } from '../../../../engine/time/frames.ts';
import { step, stepOf } from '../../../../engine/wording/sayJob.ts';
import type { ClipOptions, Undelivered } from '../../../contract/handover.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { probeClip } from '../../media/probe/probeClip.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import { copyPlainly } from '../../media/write/copyPlainly.ts';
import { renderAnnotatedClip } from '../render/clips/annotatedClip.ts';
import type { CardWords } from '../render/clips/card.ts';
import { renderFrameCopy } from '../render/clips/frameCopy.ts';
import { type Narration, renderNarratedFilm } from '../render/clips/narratedFilm.ts';
import { type RepToLoop, renderRepLoop } from '../render/clips/repLoop.ts';
import { type ClipToShow, framesOf, type PictureNote } from '../render/picture.ts';
import { pictureNote, pictureWords, renderStills } from '../render/pictures/stills.ts';
import type { HandoverWork, OpenedClip } from '../source/handoverSource.ts';
import { annotatedTime } from './annotatedTime.ts';
import type { ClipNames } from './fileNames.ts';
import { framesAsFootage } from './framesAsFootage.ts';
import type { FootageCopy } from './playedReview.ts';

/** A still that lies in the folder; its source is its name there. */
export type StillFile = Still & { readonly jpeg: Uint8Array };

/** What was written of one clip. */
export type WrittenClip = {
  readonly files: readonly FileInFolder[];
  /** By the flag's id. */
  readonly stills: ReadonlyMap<string, StillFile>;
  /** Name of the whole picture to show before the clip plays. */
  readonly poster: string | null;
  /** With times of its own. */
  readonly annotated: FootageCopy | null;
  /** The footage itself, where it was asked for and nothing in it is covered. */
  readonly original: FootageCopy | null;
  /** A copy of it that every browser plays, with its covers, where the original is none. */
  readonly plain: FootageCopy | null;
  readonly failed: readonly Undelivered[];
};

/** A clip to be written, opened and covered, with what is said of it. */
export type ClipToWrite = {
  readonly opened: OpenedClip;
  readonly review: Clip;
  readonly rows: readonly FlagRow[];
  readonly catalogue: Catalogue;
  readonly files: ClipNames;
  readonly card: CardWords;
};

type Part = Partial<WrittenClip>;

const languageOf = ({ catalogue }: ClipToWrite) => catalogue.language ?? 'en';

/** Remarks with a frame, and what they become in the picture. */
function notesOf(toWrite: ClipToWrite): readonly (readonly [row: FlagRow, note: PictureNote])[] {
  const { table } = toWrite.opened.clip;
  return toWrite.rows.flatMap((row) => {
    const note = pictureNote(row, table, languageOf(toWrite));
    return note === null || !holds(framesOf(toWrite.opened.clip), note.frame) ? [] : [[row, note] as const];
  });
}

/** A picture of each remark, into `stills/`. */
export async function makeStills(
  tools: MediaTools,
  folder: string,
  toWrite: ClipToWrite,
  { signal, report }: HandoverWork,
): Promise<Part> {
  const { files, review, opened } = toWrite;
  const notes = notesOf(toWrite);
  if (notes.length === 0) return {};
  report(0, stepOf(review.name, step('stills')));
  const [first] = notes;
  const words = pictureWords(languageOf(toWrite));
  const before = await renderStills(tools, opened.clip, first === undefined ? [] : [first[1]], { words, signal });
  const made = await renderStills(
    tools,
    opened.clip,
    notes.map(([, note]) => note),
    {
      ...{ words, framing: 'lifter', signal },
      onProgress: (share) => report(share, stepOf(review.name, step('stills'))),
    },
  );
  await mkdir(path.join(folder, 'stills'), { recursive: true });
  const stills = new Map<string, StillFile>();
  for (const [index, [row, note]] of notes.entries()) {
    const still = made.find((each) => each.note === note);
    if (still === undefined) continue;
    const source = files.still(index);
    await writeFile(path.join(folder, source), still.jpeg);
    const { width: widthPx, height: heightPx } = still.size;
    stills.set(row.flagId, { source, widthPx, heightPx, jpeg: still.jpeg });
  }
  for (const { jpeg } of before) await writeFile(path.join(folder, files.poster), jpeg);
  return { stills, poster: before.length === 0 ? null : files.poster };
}

type Wanted = { readonly toWrite: ClipToWrite; readonly wanted: ClipOptions };

/** The clip with everything drawn into it, into `clips/`. */
export async function makeAnnotated(
  tools: MediaTools,
  folder: string,
  { toWrite, wanted }: Wanted,
  { signal, report }: HandoverWork,
): Promise<Part> {
  const { files, review, opened, card } = toWrite;
  const file = files.annotated;
  const target = path.join(folder, file);
  const notes = notesOf(toWrite);
  const shots = await renderAnnotatedClip(tools, opened.clip, target, {
    notes: notes.map(([, note]) => note),
    words: pictureWords(languageOf(toWrite)),
    atNotes: wanted.atNotes,
    card,
    sound: wanted.sound,
    signal,
    onProgress: (share) => report(share, stepOf(review.name, step('annotatedClip'))),
  });
  const { table, facts } = await probeClip(tools, target, { signal });
  const [footage, range] = [opened.clip.table, framesOf(opened.clip)];
  const byFlag = new Map(notes.map(([row, note]) => [row.flagId, note]));
  return {
    annotated: {
      ...{ file, table },
      played: { facts, footage, range, ...annotatedTime(shots, { table, footage, range, notes: byFlag }) },
    },
    files: [{ name: file, kind: 'annotatedClip', clipId: review.id }],
  };
}

/** What the coach said over the clip, as a film, into `clips/`. */
export async function makeNarrated(
  tools: MediaTools,
  folder: string,
  { toWrite, narration }: { readonly toWrite: ClipToWrite; readonly narration: Narration },
  { signal, report }: HandoverWork,
): Promise<Part> {
  const { files, review, opened } = toWrite;
  const name = files.narrated;
  await renderNarratedFilm(tools, opened.clip, narration, path.join(folder, name), {
    notes: notesOf(toWrite).map(([row, note]) => ({ flagId: row.flagId, note })),
    words: pictureWords(languageOf(toWrite)),
    signal,
    onProgress: (share) => report(share, stepOf(review.name, step('narratedFilm'))),
  });
  return { files: [{ name, kind: 'narratedClip', clipId: review.id }] };
}

/** One flagged rep to be played over and over, into `clips/`. */
export async function makeLoop(
  tools: MediaTools,
  folder: string,
  { toWrite, loop }: { readonly toWrite: ClipToWrite; readonly loop: RepToLoop },
  { signal, report }: HandoverWork,
): Promise<Part> {
  const { files, review, opened } = toWrite;
  const name = files.loop(loop.rep);
  const language = languageOf(toWrite);
  await renderRepLoop(tools, opened.clip, path.join(folder, name), {
    firstFrame: loop.firstFrame,
    lastFrame: loop.lastFrame,
    note: pictureNote(loop.row, opened.clip.table, language),
    words: pictureWords(language),
    signal,
    onProgress: (share) => report(share, stepOf(review.name, step('repLoop', { rep: loop.rep }))),
  });
  return { files: [{ name, kind: 'loop', about: String(loop.rep), clipId: review.id }] };
}

/**
 * The clip by itself, for its frames: as it was filmed, without its metadata, into `originals/`, unless something in it is covered, cut
 * off or shown in another way. Where that is not what every browser plays from its first frame on, a copy made anew, into `clips/`.
 */
export async function makePlain(
  tools: MediaTools,
  folder: string,
  { toWrite, wanted }: Wanted,
  { signal, report }: HandoverWork,
): Promise<Part> {
  const { files, review, opened } = toWrite;
  const { clip } = opened;
  report(0, stepOf(review.name, step('original')));
  const original = mustBeMadeAnew(clip) ? null : await copyOriginal(tools, folder, { toWrite, wanted }, signal);
  const plays = original?.played.facts.codec === 'h264' && frameStartUs(original.table, 0) === 0;
  if (plays) return { original };
  const target = path.join(folder, files.plain);
  await renderFrameCopy(tools, clip, target, {
    words: pictureWords(languageOf(toWrite)),
    sound: wanted.sound,
    signal,
    onProgress: (share) => report(share, stepOf(review.name, step('makingCopy'))),
  });
  const copy = await framesAsFootage(tools, target, {
    footage: clip.table,
    range: framesOf(clip),
    name: review.name,
    signal,
  });
  return { original, plain: { file: files.plain, ...copy } };
}

/** Whether the file itself would show what is not to leave, or something else than the coach saw. */
const mustBeMadeAnew = (clip: ClipToShow): boolean =>
  clip.covers.length > 0 || !isAsFilmed(clip.framing ?? asFilmed) || !isWhole(framesOf(clip), clip.table);

/** The footage in a container that phones take; null where it can't be put into one. */
async function copyOriginal(
  tools: MediaTools,
  folder: string,
  { toWrite, wanted }: Wanted,
  signal: AbortSignal,
): Promise<FootageCopy | null> {
  const { files, review, opened } = toWrite;
  const target = path.join(folder, files.original);
  try {
    await copyPlainly(tools, opened.clip.file, target, { sound: wanted.sound, signal });
    const { table: footage } = opened.clip;
    const range = framesShown(null, footage);
    const copy = await framesAsFootage(tools, target, { footage, range, name: review.name, signal });
    return { file: files.original, ...copy };
  } catch (error) {
    if (error instanceof ProblemError && error.problem.code === 'bad-media') return null;
    throw error;
  }
}
