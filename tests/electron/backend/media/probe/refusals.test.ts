import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { ProblemError } from '../../../../../electron/contract/reply.ts';
import { ffmpeg, findClip } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-refusals-'));
const at = (name: string) => path.join(folder, name);
const whole = readFileSync(findClip('squat-side'));
afterAll(() => rmSync(folder, { recursive: true }));

beforeAll(async () => {
  const source = findClip('squat-side');
  writeFileSync(at('empty.mp4'), '');
  writeFileSync(at('words.mp4'), 'Not a video at all.\n'.repeat(200));
  writeFileSync(at('secret.txt'), 'private words');
  writeFileSync(
    at('playlist.mp4'),
    `#EXTM3U\n#EXT-X-TARGETDURATION:9\n#EXTINF:9,\nfile:${at('secret.txt')}\n#EXT-X-ENDLIST\n`,
  );
  writeFileSync(at('playlist.m3u8'), `#EXTM3U\n#EXT-X-TARGETDURATION:9\n#EXTINF:9,\nfile:${source}\n#EXT-X-ENDLIST\n`);
  writeFileSync(at('script.mp4'), `ffconcat version 1.0\nfile '${source}'\n`);
  writeFileSync(at('cut.mp4'), whole.subarray(0, 300_000));
  writeFileSync(at('cut at a frame.mp4'), whole.subarray(0, 298_421));
  writeFileSync(at('cut last byte.mp4'), whole.subarray(0, -1));
  writeFileSync(at('only the head.mp4'), whole.subarray(0, 2_000));
  await ffmpeg('-i', source, '-c', 'copy', '-movflags', 'frag_keyframe+empty_moov', at('fragments.mp4'));
  writeFileSync(at('cut fragments.mp4'), readFileSync(at('fragments.mp4')).subarray(0, 300_000));
  await ffmpeg('-i', source, '-c', 'copy', at('whole.mkv'));
  writeFileSync(at('cut.mkv'), readFileSync(at('whole.mkv')).subarray(0, 300_000));
  mkdirSync(at('folder.mp4'));
  await ffmpeg('-f', 'lavfi', '-i', 'sine=duration=2', '-c:a', 'aac', at('sound.mp4'));
  await ffmpeg('-i', source, '-frames:v', '1', '-f', 'mjpeg', at('picture.mp4'));
  await ffmpeg('-i', source, '-frames:v', '1', '-c:v', 'libx264', at('one frame.mp4'));
});

describe('a file that is not a whole clip', () => {
  it.each([
    ['missing.mp4', 'not-found', 'no file'],
    ['folder.mp4', 'bad-media', 'is not a file'],
    ['empty.mp4', 'bad-media', 'is empty'],
    ['words.mp4', 'bad-media', 'is not a video'],
    ['playlist.mp4', 'bad-media', 'is not a video'],
    ['playlist.m3u8', 'bad-media', 'is not a video'],
    ['script.mp4', 'bad-media', 'is not a video'],
    ['picture.mp4', 'bad-media', 'is not a video'],
    ['sound.mp4', 'bad-media', 'has no moving picture'],
    ['one frame.mp4', 'bad-media', 'single picture'],
    // Frame 206 in file order lies across byte 300,000; the index names 423.
    ['cut.mp4', 'bad-media', 'only 205 of the 423 frames'],
    ['cut at a frame.mp4', 'bad-media', 'of the 423 frames'],
    ['cut last byte.mp4', 'bad-media', 'only 422 of the 423 frames'],
    ['cut fragments.mp4', 'bad-media', 'cut short'],
    ['cut.mkv', 'bad-media', 'cut short'],
    ['only the head.mp4', 'bad-media', 'cut short'],
  ])('%s is refused in one sentence', async (name, code, says) => {
    const problem = await refusalOf(at(name));
    expect(problem.code).toBe(code);
    expect(problem.sentence).toContain(says);
    expect(problem.sentence).toContain(name);
    expect(problem.sentence).not.toContain(folder);
    expect(problem.sentence).toMatch(/^[^.].*(nothing was changed).*\.$/u);
    expect(problem.sentence.split(/[.!?]\s/u)).toHaveLength(1);
  });

  it('keeps a name with control characters on one line', async () => {
    const name = 'two\nlines\u001b[31m\u202e.mp4';
    writeFileSync(at(name), '');
    expect((await refusalOf(at(name))).sentence).toContain('“two?lines?[31m?.mp4”');
  });
});

it('a clip in fragments is read whole', async () => {
  const { facts } = await probeClip(await findMediaTools(), at('fragments.mp4'));
  expect(facts.frames).toBe(423);
});

describe('a clip with a hostile name', () => {
  it.each([
    '-i.mp4',
    'two  spaces.mp4',
    `it's "quoted".mp4`,
    'héavy 🏋️ set.mp4',
    '%03d.mp4',
    'http:x.mp4',
    'a;b&c|d$(e).mp4',
  ])('%s is read', async (name) => {
    writeFileSync(at(name), whole);
    expect((await probeClip(await findMediaTools(), at(name))).facts.frames).toBe(423);
  });

  it('is read through a path with ..', async () => {
    writeFileSync(at('plain.mp4'), whole);
    const winding = `${folder}/folder.mp4/../plain.mp4`;
    expect((await probeClip(await findMediaTools(), winding)).facts.frames).toBe(423);
  });
});

async function refusalOf(file: string) {
  try {
    await probeClip(await findMediaTools(), file);
  } catch (error) {
    if (error instanceof ProblemError) return { code: error.problem.code, sentence: error.message };
    throw error;
  }
  throw new Error(`${file} was not refused`);
}
