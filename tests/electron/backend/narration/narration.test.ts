import { appendFileSync, existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import { shownAt } from '../../../../engine/narration/shownAt.ts';
import { appFolder, ask, backendOn, copyOf, dump, refusal, sessionWithClips, temporaryFolder } from '../workbench.ts';
import { heardFrom, loudness, record, type SpokenPart, shownFrames, voiceFile } from './narrated.ts';

const work = mkdtempSync(path.join(tmpdir(), 'rackside-narration-'));
afterAll(() => rmSync(work, { recursive: true }));

const library = { folder: path.join(work, 'library'), clipId: '', sessionId: '' };
let parts: readonly SpokenPart[];
beforeAll(async () => {
  const prepared = openBackend({ libraryFolder: library.folder, appFolder });
  await ask(prepared, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  Object.assign(library, await sessionWithClips(prepared));
  await prepared.close();
  parts = [
    {
      // Its file ends early, as a recorder's does, and the part after it has to begin at two seconds all the same.
      file: await voiceFile(work, 'first.webm', 1.94, [0.5, 0.8]),
      lastsUs: 2_000_000,
      shown: shownFrames([10, 11, 12, 40], 500_000),
    },
    {
      file: await voiceFile(work, 'second.webm', 1.5, [1, 1.2]),
      lastsUs: 1_500_000,
      shown: shownFrames([41, 39, 38], 500_000, 2_000_000),
    },
  ];
}, 60_000);

const opened = () => {
  const folder = copyOf(library.folder);
  return { backend: backendOn(folder), folder, sounds: path.join(folder, 'sounds'), clipId: library.clipId };
};

describe('a narration', () => {
  it('is kept as one sound whose parts begin where they did, with what was shown', async () => {
    const { backend, sounds, clipId, folder } = opened();
    const before = dump(folder);
    const narrationId = await record(backend, clipId, parts);
    expect((await ask(backend, 'narrations.get', { clipId }))?.state).toBe('recording');
    await ask(backend, 'narrations.keep', { narrationId });
    const kept = await ask(backend, 'narrations.get', { clipId });
    if (kept?.track == null) throw new Error('Nothing was kept.');
    expect([kept.state, kept.lastsUs]).toEqual(['kept', 3_500_000]);
    const seconds = [0, 0.49, 0.5, 1.6, 2.1, 2.6, 3.1];
    const { track } = kept;
    expect(seconds.map((atS) => shownAt(track, atS * 1e6).frame)).toEqual([10, 10, 11, 40, 41, 39, 38]);

    const [file = '', ...others] = readdirSync(sounds);
    expect(others).toEqual([]);
    expect(file).toMatch(/^[0-9a-f]{64}\.webm$/);
    const levels = await loudness(path.join(sounds, file));
    expect(Math.abs(levels.length - 3_500)).toBeLessThan(20);
    const [first, second] = [heardFrom(levels, 0), heardFrom(levels, 1_500)];
    expect(Math.abs(first[0] - 500)).toBeLessThan(20);
    // Two seconds of the first part, then one of the second.
    expect(Math.abs(second[0] - 3_000)).toBeLessThan(20);
    expect(dump(folder)).toBe(before);
    expect((await ask(backend, 'media.resolve', { clipId, what: 'voice' })).path).toBe(path.join(sounds, file));
  });

  it('goes for good when it is deleted: its rows and its sound', async () => {
    const { backend, sounds, clipId } = opened();
    const narrationId = await record(backend, clipId, parts);
    await ask(backend, 'narrations.keep', { narrationId });
    await ask(backend, 'narrations.remove', { narrationId });
    expect(await ask(backend, 'narrations.get', { clipId })).toBeNull();
    expect(readdirSync(sounds)).toEqual([]);
    expect((await refusal(backend, 'media.resolve', { clipId, what: 'voice' })).code).toBe('not-found');
    expect((await refusal(backend, 'narrations.remove', { narrationId })).code).toBe('not-found');
  });

  it('survives a crash up to its last piece, and can be kept or deleted then', async () => {
    const { backend, sounds, clipId, folder } = opened();
    const narrationId = await record(backend, clipId, parts);
    await backend.close();
    // What a power cut leaves of a line that was being written.
    appendFileSync(path.join(sounds, `recording-${narrationId}`, 'shown.jsonl'), '{"part":1,"partLa');
    const again = backendOn(folder);
    expect(await ask(again, 'narrations.get', { clipId })).toMatchObject({ state: 'recording', track: null });
    await ask(again, 'narrations.keep', { narrationId });
    expect((await ask(again, 'narrations.get', { clipId }))?.lastsUs).toBe(3_500_000);
    expect(existsSync(path.join(sounds, `recording-${narrationId}`))).toBe(false);
  });

  it('is checked with the library: its sound missing, changed, or left over', async () => {
    const { backend, sounds, clipId } = opened();
    const narrationId = await record(backend, clipId, parts);
    const found = async () => (await ask(backend, 'library.verify', {})).findings;
    expect(await found()).toEqual([]);
    await ask(backend, 'narrations.keep', { narrationId });
    expect(await found()).toEqual([]);
    const [file = ''] = readdirSync(sounds);
    writeFileSync(path.join(sounds, 'stray.webm'), '');
    appendFileSync(path.join(sounds, file), '.');
    expect(await found()).toEqual([
      `The file "sounds/${file}" is no longer what was recorded.`,
      'The file "sounds/stray.webm" belongs to no narration.',
    ]);
    rmSync(path.join(sounds, 'stray.webm'));
    rmSync(path.join(sounds, file));
    expect(await found()).toEqual([`The file "sounds/${file}" is missing.`]);
  });

  it('is one a clip, of footage that is there, and holds something', async () => {
    const { backend, clipId } = opened();
    const { narrationId } = await ask(backend, 'narrations.begin', { clipId });
    const second = await refusal(backend, 'narrations.begin', { clipId });
    expect([second.code, second.sentence]).toEqual(['conflict', expect.stringMatching(/already has a narration/)]);
    expect((await refusal(backend, 'narrations.keep', { narrationId })).sentence).toMatch(/Nothing was recorded/);
    const film = { clipId, path: path.join(temporaryFolder(), 'film.mp4') };
    expect((await refusal(backend, 'narrations.render', film)).code).toBe('not-found');
    await ask(backend, 'narrations.remove', { narrationId });
  });

  it('makes its session due again, and is no act', async () => {
    const { backend, clipId } = opened();
    const { sessionId } = library;
    const history = await ask(backend, 'history.list', { sessionId });
    const narrationId = await record(backend, clipId, parts);
    await ask(backend, 'narrations.keep', { narrationId });
    expect(await ask(backend, 'history.list', { sessionId })).toEqual(history);
  });
});
