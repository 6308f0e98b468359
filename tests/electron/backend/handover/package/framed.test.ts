import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBackend } from '../../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../../electron/contract/backend.ts';
import { ffmpeg } from '../../media/clips.ts';
import { appFolder, ask, jobEnd, sessionWithClips } from '../../workbench.ts';
import { numberedClip, numbersAt, numbersIn } from './numberedClip.ts';

const root = mkdtempSync(path.join(tmpdir(), 'rackside-framed-'));
const newFolder = (name: string): string => mkdtempSync(path.join(root, `${name}-`));

/** Frames of the footage that are flagged, within its section of frames 20 to 69. */
const flagged = [20, 33, 60];
const fps = 25;

let backend: Backend;
let place: string;

/** A grey picture of 128 × 64, dark on its left half, with a white spot in its upper left corner. */
async function markedClip(folder: string): Promise<string> {
  const file = path.join(folder, 'marked.mp4');
  const lum = "lum='if(lt(X,16)*lt(Y,16),220,if(lt(X,64),60,120))':cb=128:cr=128";
  const source = `nullsrc=size=128x64:rate=25,format=yuv420p,geq=${lum}`;
  await ffmpeg(
    '-f',
    'lavfi',
    '-i',
    source,
    '-frames:v',
    '30',
    '-c:v',
    'libx264',
    '-pix_fmt',
    'yuv420p',
    '-crf',
    '4',
    file,
  );
  return file;
}

beforeAll(async () => {
  const footage = newFolder('footage');
  const long = await numberedClip(footage, { name: 'long.mp4', rate: String(fps) });
  backend = openBackend({ libraryFolder: newFolder('library'), appFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  const { sessionId, clipIds } = await sessionWithClips(backend, [long, await markedClip(footage)]);
  const [trimmed = '', marked = ''] = clipIds;
  await ask(backend, 'clips.trim', { clipId: trimmed, section: { firstFrame: 20, lastFrame: 69 } });
  const flag = { criterion: 'depth', severity: 'adjust', reps: 'set' } as const;
  for (const frame of flagged)
    await ask(backend, 'flags.add', { ...flag, clipId: trimmed, frame, note: `Frame ${frame}` });
  await ask(backend, 'flags.add', { ...flag, clipId: marked, frame: 3, note: 'Here' });
  await ask(backend, 'clips.frame', { clipId: marked, change: { turnDeg: 90, brightness: 1.5 } });
  await ask(backend, 'clips.frame', {
    clipId: marked,
    change: { mirrored: true, crop: { leftPx: 16, topPx: 0, widthPx: 48, heightPx: 96 } },
  });
  const drawn = {
    shape: 'line',
    points: [
      { x: 20, y: 90 },
      { x: 60, y: 90 },
    ],
  } as const;
  await ask(backend, 'drawings.add', {
    clipId: marked,
    drawn: { ...drawn, points: [...drawn.points] },
    frame: 0,
    lastFrame: 29,
  });
  const folder = newFolder('out');
  const { jobIds } = await ask(backend, 'handover.start', {
    sessionIds: [sessionId],
    folder,
    options: { loops: false },
  });
  const { id } = await jobEnd(backend, jobIds[0] ?? '');
  const { deliveries } = await ask(backend, 'handover.list', { sessionId });
  const delivery = deliveries.find(({ jobId }) => jobId === id);
  expect(delivery?.failed).toEqual([]);
  place = delivery?.path ?? '';
}, 240_000);

afterAll(async () => {
  await backend.close();
  rmSync(root, { recursive: true, force: true });
});

const text = (name: string): string => readFileSync(path.join(place, name), 'utf8');
const pageData = () =>
  JSON.parse(/<script type="application\/json" id="data">(.*)<\/script>/.exec(text('index.html'))?.[1] ?? '');
const inFolder = (name: string) => path.join(place, name);

describe('a section of a clip that is handed over', () => {
  it('is all that leaves: its frames, from its first to its last', async () => {
    const expected = Array.from({ length: 50 }, (_, index) => 20 + index);
    expect(await numbersIn(inFolder('clips/long-plain.mp4'))).toEqual(expected);
    const annotated = await numbersIn(inFolder('clips/long.mp4'));
    expect(Math.max(...annotated)).toBeLessThanOrEqual(69);
    expect(text('manifest.json')).not.toContain('originals/long');
  });

  it('has one clock in page, sheet and clip: that of what plays there', async () => {
    const [page] = pageData().clips;
    const seeksS = page.notes.map(({ seekS }: { seekS: number }) => seekS);
    expect(await numbersAt(inFolder('clips/long-plain.mp4'), seeksS)).toEqual(flagged);
    const { flags } = JSON.parse(text('sheet.json'));
    const told = flags.filter(({ note }: { note: string }) => note.startsWith('Frame'));
    expect(told.map(({ atS, frame }: { atS: number; frame: number }) => [atS, frame])).toEqual(
      flagged.map((frame) => [(frame - 20) / fps, frame - 20]),
    );
    expect(text('letter.txt') + text('index.html')).not.toContain('0:02.4');
  });

  it('is a whole clip to another Rackside', () => {
    const review = JSON.parse(text('review.json'));
    const [clip] = review.entries[0].clips;
    expect(clip).toMatchObject({ path: 'clips/long-plain.mp4', facts: { frames: 50 } });
    expect(clip).not.toHaveProperty('section');
    expect(review.entries[0].flags.slice(0, 3).map(({ at }: { at: { frame: number } }) => at.frame)).toEqual([
      0, 13, 40,
    ]);
  });
});

describe('a clip that is turned, cut, mirrored and brightened', () => {
  /** Light of a spot of a picture, by its shares of width and height. */
  async function lightAt(file: string, x: number, y: number): Promise<number> {
    const spot = `crop=4:4:in_w*${x}-2:in_h*${y}-2,scale=1:1:flags=area,format=gray`;
    const [grey = -1] = await ffmpeg('-i', inFolder(file), '-frames:v', '1', '-vf', spot, '-f', 'rawvideo', '-');
    return grey;
  }
  const brighter = (luma: number) => 16 + 1.5 * (luma - 16);

  // Turned to the right the dark half is the upper one and the spot stands upper right; the crop cuts off 16 on the left,
  // and the mirror takes the spot to the left.
  it.each(['clips/marked-plain.mp4', 'stills/marked-01.jpg'])('shows so in %s', async (file) => {
    const full = (luma: number) => ((luma - 16) * 255) / 219;
    const spot = await lightAt(file, 0.12, 0.06);
    expect(spot).toBeGreaterThan(full(225));
    expect(Math.abs((await lightAt(file, 0.8, 0.1)) - full(brighter(60)))).toBeLessThan(8);
    expect(Math.abs((await lightAt(file, 0.5, 0.8)) - full(brighter(120)))).toBeLessThan(8);
  });

  it('has its drawings where the other Rackside sees them, and no framing left to apply', () => {
    const clip = JSON.parse(text('review.json')).entries[0].clips[1];
    expect(clip).not.toHaveProperty('framing');
    expect(clip.facts).toMatchObject({ width: 48, height: 96 });
    // Mirrored about the crop's right edge, 64 pixels from the left of the upright picture.
    expect(clip.drawings[0].points).toEqual([
      { x: 44, y: 90 },
      { x: 4, y: 90 },
    ]);
  });
});
