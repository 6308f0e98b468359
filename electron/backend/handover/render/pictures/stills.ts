import { directionOf, sentence, upperFirst } from '../../../../../engine/document/words.ts';
import type { Language } from '../../../../../engine/language/language.ts';
import type { FlagRow } from '../../../../../engine/sheet/flagRows.ts';
import { sheetLanguage } from '../../../../../engine/sheet/sheetLanguage.ts';
import { frameAtUs } from '../../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import { sayerOf, startPageWording } from '../../../../../engine/wording/wordings.ts';
import { readPictureColours } from '../../../media/probe/pictureColours.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { readChosenPictures } from '../../../media/read/readPictures.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import { encodeJpegs } from '../../../media/write/encodeJpegs.ts';
import { openOverlay } from '../overlay/overlay.ts';
import { wholePicture } from '../overlay/painter.ts';
import { type ClipToShow, evenSizeWithin, type PictureNote, type PictureWords, sizeSeenOf } from '../picture.ts';
import { cutPicture, evenCut } from './cutPicture.ts';
import { lifterCrop } from './lifterCrop.ts';

/** A picture of a remark's frame with everything drawn over it but words: they stand beside it wherever it is shown. */
export type Still = { readonly note: PictureNote; readonly size: PictureSize; readonly jpeg: Uint8Array };

export type StillsOptions = {
  readonly words: PictureWords;
  /** `lifter`: cut to who lifts, the same for all stills of a clip, where that is known and the coach has cut out no part; what is seen of
   * the picture otherwise. */
  readonly framing?: 'lifter' | 'whole';
  /** 1280 where nothing is said. */
  readonly longestSidePx?: number;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal | undefined;
};

/**
 * The stills of a clip's remarks, in the order of the remarks: JPEG without metadata, upright, an even number of pixels
 * on each side. The clip is decoded once for all of them. Throws `cancelled`, or `bad-media` when a frame can't be decoded.
 */
export async function renderStills(
  tools: MediaTools,
  clip: ClipToShow,
  notes: readonly PictureNote[],
  { words, framing = 'whole', longestSidePx = 1280, onProgress, signal }: StillsOptions,
): Promise<readonly Still[]> {
  if (notes.length === 0) return [];
  const frames = notes.map(({ frame }) => frame);
  const crop =
    (framing === 'lifter' && !clip.framing?.crop ? lifterCrop(clip, frames) : null) ?? wholePicture(sizeSeenOf(clip));
  const { width, height } = sizeSeenOf(clip);
  const longestOfCrop = Math.max(crop.right - crop.left, crop.bottom - crop.top);
  const size = evenSizeWithin({ width, height }, (longestSidePx * Math.max(width, height)) / longestOfCrop);
  const scale = { x: size.width / width, y: size.height / height };
  const cut = evenCut(
    { left: crop.left * scale.x, right: crop.right * scale.x, top: crop.top * scale.y, bottom: crop.bottom * scale.y },
    size,
  );
  const colours = await readPictureColours(tools, clip.file, signal);
  const overlay = await openOverlay(clip, { size, colours, words, said: [] });
  const rising = [...notes].sort((one, other) => one.frame - other.frame);

  async function* finished(): AsyncGenerator<Uint8Array, void, void> {
    let done = 0;
    for await (const { frame, bytes } of readChosenPictures(tools, clip.file, {
      table: clip.table,
      frames,
      size,
      from: { shown: clip.shown, look: clip.framing },
      signal,
    })) {
      const picture = bytes.slice();
      overlay.finish(picture, { frame, path: 'whole', notes: [], clockUs: null });
      const still = cutPicture(picture, size, cut);
      const count = rising.filter((each) => each.frame === frame).length;
      for (let shown = 0; shown < count; shown += 1) {
        yield still;
        done += 1;
        onProgress?.(done / notes.length);
      }
    }
  }

  const jpegs = await encodeJpegs(tools, { size: cut, colours, frames: finished(), signal });
  const stillOf = new Map(rising.map((note, index) => [note, jpegs[index]]));
  return notes.flatMap((note) => {
    const jpeg = stillOf.get(note);
    return jpeg === undefined ? [] : [{ note, size: { width: cut.width, height: cut.height }, jpeg }];
  });
}

/** Marks around text that runs from right to left, which nothing that is painted needs. */
const isolates = /[\u2068\u2069]/g;

/** What a picture says besides remarks. */
export function pictureWords(language: Language): PictureWords {
  const say = sayerOf(startPageWording, language);
  return { knee: say('knee'), trunk: say('trunk'), clock: sheetLanguage(language).format.clock };
}

/** A remark of the sheet as its clip's pictures show it; null when it has no time in the clip. */
export function pictureNote(row: FlagRow, table: FrameTable, language: Language): PictureNote | null {
  const frame = row.frame ?? (row.us === null ? null : frameAtUs(table, Math.round(row.us)));
  if (frame === null || frame < 0 || frame >= table.ticks.length) return null;
  const { say } = sheetLanguage(language);
  const { severity } = row;
  const word = severity === null ? say('plainNote') : say('severityWord', { severity });
  const where = row.reps === null ? say('inSet') : say('inReps', { count: row.reps.length, reps: row.reps });
  return {
    frame,
    severity,
    heading: [word, row.criterionName, where].join(' · '),
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
