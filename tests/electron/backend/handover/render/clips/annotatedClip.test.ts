import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type AnnotatedClipOptions,
  renderAnnotatedClip,
} from '../../../../../../electron/backend/handover/render/clips/annotatedClip.ts';
import { pictureWords } from '../../../../../../electron/backend/handover/render/pictures/stills.ts';
import { findMediaTools } from '../../../../../../electron/backend/media/tools/mediaTools.ts';
import type { Cover } from '../../../../../../engine/covers/cover.ts';
import { ffmpeg, findClip } from '../../../media/clips.ts';
import { distanceToPath, measuredClip, noteAt, pictureAt, plainClip, rangeWithin, truthOf } from '../../shownClip.ts';

const run = promisify(execFile);
const folder = mkdtempSync(path.join(tmpdir(), 'rackside-annotated-'));
afterAll(() => rmSync(folder, { recursive: true }));

const card = {
  heading: 'Back squat',
  lines: ['Robin Vale', '9 March 2026'],
  legend: 'What the marks mean: stop × unsafe.',
};
const usual = { notes: [], words: pictureWords('en'), card, sound: 'kept' } as const;

/** Names of an MP4's outermost boxes, in order (ISO/IEC 14496-12, 4.2). */
function boxesOf(file: string): string[] {
  const bytes = readFileSync(file);
  const names: string[] = [];
  for (let at = 0; at + 8 <= bytes.length; at += bytes.readUInt32BE(at))
    names.push(bytes.toString('latin1', at + 4, at + 8));
  return names;
}

type Probed = {
  readonly streams: readonly Readonly<Record<string, unknown>>[];
  readonly format: { readonly duration: string; readonly tags?: Readonly<Record<string, string>> };
};

async function probed(file: string): Promise<Probed> {
  const { ffprobe } = await findMediaTools();
  const { stdout } = await run(ffprobe.path, ['-v', 'error', '-show_streams', '-show_format', '-of', 'json', file]);
  return JSON.parse(stdout);
}

async function render(name: string, clip: Parameters<typeof renderAnnotatedClip>[1], options: AnnotatedClipOptions) {
  const file = path.join(folder, `${name}.mp4`);
  await renderAnnotatedClip(await findMediaTools(), clip, file, options);
  return file;
}

// Three seconds of the squat with a loud tone in its second second, and tags that must not leave the desk.
const sounding = path.join(folder, 'sounding.mov');
beforeAll(async () => {
  await ffmpeg(
    ...[
      '-i',
      findClip('squat-side'),
      '-f',
      'lavfi',
      '-i',
      'sine=frequency=440:sample_rate=44100:duration=3',
      '-t',
      '3',
    ],
    ...[
      '-af',
      "volume='if(between(t,1,2),8,0)':eval=frame",
      '-c:v',
      'libx264',
      '-qp',
      '10',
      '-c:a',
      'aac',
      '-shortest',
    ],
    ...['-metadata', 'creation_time=2026-03-09T10:00:00Z', '-metadata', 'location=+52.5200+013.4050/'],
    ...['-metadata', 'make=Maker', '-metadata', 'model=Telephone', '-movflags', 'use_metadata_tags', sounding],
  );
});

describe('an annotated clip', () => {
  it('is what phones play, as long as clip, card and freezes together, without metadata', async () => {
    const file = await render('whole', await plainClip(sounding), { ...usual, notes: [noteAt(30), noteAt(60)] });
    const { streams, format } = await probed(file);
    const [video, audio] = streams;
    expect(video).toMatchObject({
      codec_name: 'h264',
      pix_fmt: 'yuv420p',
      width: 854,
      height: 480,
      r_frame_rate: '30/1',
    });
    expect(['High', 'Main']).toContain(video?.profile);
    expect(audio).toMatchObject({ codec_name: 'aac' });
    expect(Math.abs(Number(video?.duration) - (3 + 2 + 2 * 1.5))).toBeLessThanOrEqual(1 / 30);
    expect(Math.abs(Number(format.duration) - 8)).toBeLessThanOrEqual(0.05);
    const boxes = boxesOf(file);
    expect(boxes.indexOf('moov')).toBeGreaterThan(0);
    expect(boxes.indexOf('moov')).toBeLessThan(boxes.indexOf('mdat'));
    expect(Object.keys(format.tags ?? {}).sort()).toEqual(['compatible_brands', 'major_brand', 'minor_version']);
    const bytes = readFileSync(file).toString('latin1');
    for (const word of ['Telephone', 'Maker', '+52.52', '2026-03-09', '©xyz']) expect(bytes).not.toContain(word);
    // Creation and change time of the movie header, which players show as a date, are "never".
    const header = bytes.indexOf('mvhd');
    expect(
      readFileSync(file)
        .subarray(header + 8, header + 16)
        .every((byte) => byte === 0),
    ).toBe(true);
  });

  it('keeps the sound where it plays as filmed, and is silent under card and freeze', async () => {
    const file = await render('sound', await plainClip(sounding), { ...usual, notes: [noteAt(45)] });
    const pcm = await ffmpeg('-i', file, '-ac', '1', '-ar', '1000', '-f', 's16le', '-');
    const loud = (fromS: number, toS: number) => {
      let most = 0;
      for (let at = fromS * 1000; at < toS * 1000; at += 1) most = Math.max(most, Math.abs(pcm.readInt16LE(2 * at)));
      return most > 3000;
    };
    // Card to 2 s, tone from 3 s, frozen from 3.5 s to 5 s, tone on to 5.5 s.
    const expected = [false, true, false, true, false];
    expect([loud(0.1, 2.9), loud(3.1, 3.4), loud(3.6, 4.9), loud(5.1, 5.4), loud(5.6, 6.4)]).toEqual(expected);
  });

  it('drops the sound when asked to, and has none where the clip has none', async () => {
    const dropped = await render('dropped', await plainClip(sounding), { ...usual, sound: 'dropped' });
    expect((await probed(dropped)).streams.map(({ codec_type }) => codec_type)).toEqual(['video']);
    const mute = path.join(folder, 'mute.mp4');
    await ffmpeg('-i', sounding, '-an', '-t', '1', '-c:v', 'libx264', mute);
    const kept = await render('none to keep', await plainClip(mute), { ...usual, card: null });
    expect((await probed(kept)).streams.map(({ codec_type }) => codec_type)).toEqual(['video']);
  });

  it('has the path burned in where the disc was, growing with the rep', async () => {
    const truth = truthOf('squat-side');
    const clip = await measuredClip('squat-side');
    const file = await render('path', clip, { ...usual, notes: [noteAt(80)], card: null });
    // Frame 80 as it is frozen, and frame 110 after the freeze of 45 frames.
    for (const [place, frame] of [
      [90, 80],
      [155, 110],
    ] as const) {
      const rgb = await pictureAt(file, place);
      for (let each = 24; each <= frame; each += 1) {
        const [xPx = 0, yPx = 0] = truth.disc_centre_px[each] ?? [];
        expect(distanceToPath(rgb, clip.shown, { xPx, yPx })).toBeLessThanOrEqual(2);
      }
    }
    const early = await pictureAt(file, 50);
    const [xPx = 0, yPx = 0] = truth.disc_centre_px[80] ?? [];
    expect(distanceToPath(early, clip.shown, { xPx, yPx })).toBe(Number.POSITIVE_INFINITY);
  });

  it('goes slowly around a remark', async () => {
    const clip = await plainClip(sounding);
    const file = await render('slow', clip, {
      ...usual,
      notes: [noteAt(45)],
      card: null,
      atNotes: { do: 'slow', speed: 0.5 },
    });
    // From half a second before to a second after, at half speed: 1.5 s more.
    expect(Math.abs(Number((await probed(file)).streams[0]?.duration) - 4.5)).toBeLessThanOrEqual(1 / 30);
  });

  it('stands upright, and hides what is covered', async () => {
    const cut = path.join(folder, 'portrait.mov');
    await ffmpeg('-i', findClip('press-portrait'), '-t', '1', '-c', 'copy', cut);
    const box = { leftPx: 180, topPx: 300, widthPx: 80, heightPx: 80 };
    const cover: Cover = { firstFrame: 0, lastFrame: 1000, look: 'filled', places: [{ frame: 0, box }] };
    const clip = { ...(await plainClip(cut)), covers: [cover] };
    const file = await render('portrait', clip, { ...usual, card: null });
    expect((await probed(file)).streams[0]).toMatchObject({ width: 480, height: 854 });
    const rgb = await pictureAt(file, 15);
    expect(rangeWithin(rgb, 480, { left: 184, top: 304, right: 256, bottom: 376 })).toBeLessThan(12);
    const bare = await pictureAt(cut, 15);
    expect(rangeWithin(bare, 480, { left: 184, top: 304, right: 256, bottom: 376 })).toBeGreaterThan(40);
  });

  it('lasts as long as a clip of changing rate', async () => {
    const clip = await plainClip(findClip('squat-variable-rate'));
    const cut = {
      ...clip,
      table: { ...clip.table, ticks: clip.table.ticks.slice(0, 90), endTicks: clip.table.ticks[90] ?? 0 },
    };
    const { numerator, denominator } = clip.table.timeBase;
    const lastsS = ((cut.table.endTicks - (cut.table.ticks[0] ?? 0)) * numerator) / denominator;
    const file = await render('variable', cut, { ...usual, card: null });
    expect(Math.abs(Number((await probed(file)).streams[0]?.duration) - lastsS)).toBeLessThanOrEqual(1 / 30);
  });
});

describe('cancelling', () => {
  it('leaves nothing behind', async () => {
    const place = path.join(folder, 'cancelled');
    const sounds = () => readdirSync(tmpdir()).filter((name) => name.startsWith('rackside-sound-'));
    const before = sounds();
    const stop = new AbortController();
    const onProgress = (share: number) => share > 0.2 && stop.abort();
    const work = renderAnnotatedClip(await findMediaTools(), await plainClip(sounding), path.join(place, 'never.mp4'), {
      ...usual,
      ...{ signal: stop.signal, onProgress },
    });
    await expect(work).rejects.toMatchObject({ problem: { code: 'cancelled' } });
    expect(readdirSync(place)).toEqual([]);
    expect(sounds()).toEqual(before);
  });
});
