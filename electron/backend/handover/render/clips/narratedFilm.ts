import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import { seenPoint } from '../../../../../engine/framing/picturePlaces.ts';
import { type CaptionedFlag, captionCues } from '../../../../../engine/narration/captions.ts';
import type { NarrationTrack } from '../../../../../engine/narration/narration.ts';
import {
  type DecodeStretch,
  decodeStretches,
  type NarrationShot,
  narrationShotCount,
  narrationShots,
} from '../../../../../engine/narration/narrationShots.ts';
import type { Drawing } from '../../../../../engine/review/drawings/drawing.ts';
import { readPictureColours } from '../../../media/probe/pictureColours.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { type ReadPicture, readChosenPictures, readPictures } from '../../../media/read/readPictures.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import { encodeVideo } from '../../../media/write/encodeVideo.ts';
import { makeVoiceTrack } from '../../../media/write/voice.ts';
import { planarBytes } from '../overlay/layer.ts';
import { openOverlay } from '../overlay/overlay.ts';
import {
  type ClipToShow,
  evenSizeWithin,
  type PictureNote,
  type PictureWords,
  partSeenOf,
  sizeSeenOf,
  wordsOfNote,
} from '../picture.ts';
import { outputRate } from './composedFrames.ts';
import { nearer } from './nearer.ts';
import { readingUs } from './timeline.ts';

/** What was said over a clip: the sound, and what was shown, in pixels of the clip's upright picture. */
export type Narration = { readonly soundFile: string; readonly track: NarrationTrack };

export type NarratedFilmOptions = {
  readonly notes: readonly { readonly flagId: string; readonly note: PictureNote }[];
  readonly words: PictureWords;
  /** 1920 where nothing is said. */
  readonly longestSidePx?: number;
  /** Called with the share done, 0-1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal | undefined;
};

/** No slower than this: what is drawn while somebody speaks has to move. */
const leastRate = { numerator: 24, denominator: 1 };

/**
 * Writes what was said over a clip as an MP4 that phones play: its pictures as they were on screen, the notes as plates while their frames are, the
 * clip's covers, and the voice. Whole or not at all. Throws `cancelled`, `disk`, or `bad-media`.
 */
export async function renderNarratedFilm(
  tools: MediaTools,
  clip: ClipToShow,
  { soundFile, track }: Narration,
  output: string,
  { notes, words, longestSidePx = 1920, onProgress, signal }: NarratedFilmOptions,
): Promise<void> {
  const [part, shown] = [partSeenOf(clip), sizeSeenOf(clip)];
  const size = evenSizeWithin(shown, longestSidePx);
  const colours = await readPictureColours(tools, clip.file, signal);
  const said = notes.flatMap(({ note }) => wordsOfNote(note));
  const drawings = track.shapes.map((drawn, index) => drawingOf(drawn, index));
  const overlay = await openOverlay({ ...clip, drawings }, { size, colours, words, said });
  const own = outputRate(clip.table);
  const rate = own.numerator / own.denominator < leastRate.numerator ? leastRate : own;
  const flags = notes.map(({ flagId, note }): CaptionedFlag => {
    return { id: flagId, frame: note.frame, readingUs: readingUs([note]) };
  });
  const cues = captionCues(track, flags);
  const plates = keptByIds(notes);
  const count = narrationShotCount(track, rate);
  const stretches = decodeStretches(framesOf(narrationShots(track, rate, cues)));

  async function* frames(): AsyncGenerator<Uint8Array, void, void> {
    const reading = picturesOf(tools, clip, { stretches, size, signal });
    const [whole, closer] = [new Uint8Array(planarBytes(size)), new Uint8Array(planarBytes(size))];
    let picture = whole;
    let decoded: IteratorResult<ReadPicture, void> | null = null;
    let last: NarrationShot | null = null;
    let done = 0;
    try {
      for (const shot of narrationShots(track, rate, cues)) {
        const notes = plates(shot.flagIds);
        if (last === null || last.frame !== shot.frame) decoded = await reading.next();
        if (decoded === null || decoded.done) return;
        if (last === null || last.frame !== shot.frame || last.look !== shot.look || plates(last.flagIds) !== notes) {
          const { look, frame } = shot;
          whole.set(decoded.value.bytes);
          overlay.finish(whole, {
            ...{ frame, notes: [], clockUs: null },
            path: look.layers.includes('path') ? 'soFar' : null,
            body: look.layers.includes('joints') ? 'shown' : 'hidden',
            drawings: look.drawn.map(idOf),
          });
          picture = look.near === null ? whole : closer;
          if (look.near !== null) {
            const near = { ...look.near, ...seenPoint(part, look.near) };
            nearer(whole, closer, { size, shown, near });
          }
          overlay.caption(picture, notes);
          last = shot;
        }
        yield picture;
        done += 1;
        onProgress?.(Math.min(1, done / count));
      }
    } finally {
      await reading.return();
    }
  }

  const soundtrack = path.join(tools.temporary, `rackside-voice-${randomUUID()}`);
  try {
    await makeVoiceTrack(tools, { file: soundFile, lastsUs: track.lastsUs }, soundtrack, signal);
    await encodeVideo(tools, output, {
      ...{ size, rate, colours, frames: frames(), quality: 'good', soundtrack, signal },
    });
  } finally {
    await rm(soundtrack, { force: true });
  }
}

const idOf = (index: number): string => `shown-${index}`;

/** A shape of a track as a drawing; when it shows is said by the track. */
const drawingOf = (drawn: NarrationTrack['shapes'][number], index: number): Drawing => ({
  ...drawn,
  id: idOf(index),
  from: { seconds: 0 },
  to: { seconds: 0 },
});

function* framesOf(shots: Iterable<NarrationShot>): Generator<number, void, void> {
  for (const { frame } of shots) yield frame;
}

/** The notes of some flags: the same list for the same flags, for whoever keeps what was drawn of it. */
function keptByIds(notes: NarratedFilmOptions['notes']): (ids: readonly string[]) => readonly PictureNote[] {
  const lists = new Map<string, readonly PictureNote[]>();
  return (ids) => {
    const key = ids.join(' ');
    const known = lists.get(key) ?? notes.filter(({ flagId }) => ids.includes(flagId)).map(({ note }) => note);
    lists.set(key, known);
    return known;
  };
}

type Reading = {
  readonly stretches: readonly DecodeStretch[];
  readonly size: PictureSize;
  readonly signal: AbortSignal | undefined;
};

/** The pictures of a film, one for each change of the frame; what goes to and fro is held a few frames at a time. */
async function* picturesOf(
  tools: MediaTools,
  { file, table, shown, framing: look }: ClipToShow,
  { stretches, size, signal }: Reading,
): AsyncGenerator<ReadPicture, void, void> {
  for (const { decode, frames } of stretches) {
    const [firstFrame = 0, lastFrame = firstFrame] = [Math.min(...frames), Math.max(...frames)];
    if (decode === 'inOrder') {
      const wanted = new Set(frames);
      const options = { table, shown, look, firstFrame, lastFrame, shrinkTo: size, planes: 'colour', signal } as const;
      for await (const picture of readPictures(tools, file, { ...options, bytes: 'shared' })) {
        if (wanted.has(picture.frame)) yield picture;
      }
      continue;
    }
    const held = new Map<number, ReadPicture>();
    for await (const picture of readChosenPictures(tools, file, {
      table,
      frames,
      size,
      from: { shown, look },
      signal,
    })) {
      held.set(picture.frame, picture);
    }
    for (const frame of frames) {
      const picture = held.get(frame);
      if (picture !== undefined) yield picture;
    }
  }
}
