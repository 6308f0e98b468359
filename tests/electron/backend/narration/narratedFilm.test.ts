import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderNarratedFilm } from '../../../../electron/backend/handover/render/clips/narratedFilm.ts';
import { pictureWords } from '../../../../electron/backend/handover/render/pictures/stills.ts';
import { probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { NarrationTrack } from '../../../../engine/narration/narration.ts';
import { numberedClip, numbersIn } from '../handover/package/numberedClip.ts';
import { noteAt, plainClip } from '../handover/shownClip.ts';
import { ffmpeg } from '../media/clips.ts';
import { heardFrom, loudness, voiceFile } from './narrated.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-narrated-'));
afterAll(() => rmSync(folder, { recursive: true }));

const plain = { near: null, drawn: [], layers: [] };
/** On at the clip's own pace, to and fro, a leap, and a frame that stays. */
const shown = [...Array.from({ length: 30 }, (_, at) => 20 + at), 49, 48, 47, 46, 47, 48, 90, 91, 3];
const eachUs = 40_000;
const track: NarrationTrack = {
  frames: shown.map((frame, index) => [index * eachUs, frame]),
  lastsUs: shown.length * eachUs + 500_000,
  looks: [{ atUs: 0, ...plain }],
  shapes: [],
};

let clip: Awaited<ReturnType<typeof plainClip>>;
let soundFile: string;
beforeAll(async () => {
  clip = await plainClip(await numberedClip(folder, { name: 'numbered.mp4', rate: '30' }));
  soundFile = await voiceFile(folder, 'voice.webm', 2, [0.6, 0.9]);
}, 60_000);

/** What was on screen at a time, by looking at all of it. */
const trueFrameAt = (us: number) => track.frames.filter(([atUs]) => atUs <= us).at(-1)?.[1];

describe('the film of a narration', () => {
  it('shows at each time the frame that was shown then, read off its pictures, with the voice in its place', async () => {
    const tools = await findMediaTools();
    const film = path.join(folder, 'film.mp4');
    await renderNarratedFilm(tools, clip, { soundFile, track }, film, { notes: [], words: pictureWords('en') });
    const numbers = await numbersIn(film);
    expect(Math.abs(numbers.length - (track.lastsUs * 30) / 1e6)).toBeLessThan(1);
    const wrong = numbers.filter((number, picture) => number !== trueFrameAt(((picture + 0.5) * 1e6) / 30));
    expect(wrong).toEqual([]);
    const { hasAudio, facts } = await probeClip(tools, film, {});
    expect([hasAudio, facts.codec]).toEqual([true, 'h264']);
    const [from, to] = heardFrom(await loudness(film), 0);
    // AAC hears a tone up to two of its frames of 21 ms early.
    expect(Math.abs(from - 600)).toBeLessThan(50);
    expect(Math.abs(to - 900)).toBeLessThan(50);
  }, 60_000);

  it('covers, comes nearer, draws, and captions a flag while its frame is up', async () => {
    const tools = await findMediaTools();
    const film = path.join(folder, 'drawn.mp4');
    const { width, height } = clip.shown;
    const grey = async (atS: number, x: number, y: number): Promise<number> => {
      const crop = `crop=4:4:${x}:${y},scale=1:1:flags=area,format=gray`;
      return (
        (await ffmpeg('-ss', String(atS), '-i', film, '-frames:v', '1', '-vf', crop, '-f', 'rawvideo', '-'))[0] ?? -1
      );
    };
    const box = { leftPx: 20, topPx: 200, widthPx: 40, heightPx: 30 };
    const covers = [
      { kind: 'box' as const, firstFrame: 0, lastFrame: 99, look: 'filled' as const, places: [{ frame: 0, box }] },
    ];
    // Frame 0 is black along its upper edge and grey (120) below; a thick line is drawn over the grey.
    const line = {
      shape: 'line' as const,
      points: [
        { x: 200, y: 150 },
        { x: 300, y: 150 },
      ] as [{ x: number; y: number }, { x: number; y: number }],
    };
    const told: NarrationTrack = {
      frames: [
        [0, 0],
        [3_000_000, 50],
      ],
      lastsUs: 4_000_000,
      looks: [
        { atUs: 0, ...plain },
        { atUs: 1_000_000, ...plain, drawn: [0] },
        { atUs: 2_000_000, ...plain, near: { scale: 4, x: 40, y: 215 } },
      ],
      shapes: [line],
    };
    const note = { ...noteAt(50), frame: 50 };
    const notes = [{ flagId: 'flag', note }];
    await renderNarratedFilm(tools, { ...clip, covers }, { soundFile, track: told }, film, {
      notes,
      words: pictureWords('en'),
    });
    expect(await grey(0.5, 38, 213)).toBeLessThan(60);
    expect(Math.abs((await grey(0.5, 248, 148)) - 120)).toBeLessThan(8);
    expect(Math.abs((await grey(1.5, 248, 148)) - 120)).toBeGreaterThan(25);
    // Four times as near, the covered box fills the middle, far beyond its own size.
    expect(await grey(2.5, width / 2 + 60, height / 2)).toBeLessThan(60);
    const plate = (atS: number) =>
      Promise.all([10, width - 60].flatMap((x) => [20, height - 30].map((y) => grey(atS, x, y))));
    expect(await plate(3.5)).not.toEqual(await plate(2.5));
  }, 60_000);
});
