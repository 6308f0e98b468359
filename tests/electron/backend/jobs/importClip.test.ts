import { createHash } from 'node:crypto';
import { copyFileSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import {
  appFolder,
  ask,
  hingeFile,
  jobEnd,
  libraryWithClips,
  newLibrary,
  newSession,
  sessionWithClips,
  squatFile,
  temporaryFolder,
} from '../workbench.ts';

const truth = JSON.parse(readFileSync(path.join(appFolder, 'tests/footage/squat-side.truth.json'), 'utf8'));
const hashOf = (file: string) => createHash('sha256').update(readFileSync(file)).digest('hex');

it('copies the file in untouched, with the facts and frame times that the clip was made with', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const original = hashOf(squatFile);
  const { sessionId, clipId } = await sessionWithClips(backend);

  const { review, media } = await ask(backend, 'review.get', { sessionId });
  const [clip] = review.entries[0]?.clips ?? [];
  expect(clip).toMatchObject({ id: clipId, name: 'squat-side.mp4', view: 'side', realTimeFactor: 1, reps: [] });
  expect(clip?.facts).toMatchObject({ sha256: original, codec: 'h264', frames: truth.video.frames, rotationDeg: 0 });
  const { table, playback } = await ask(backend, 'clips.frameTable', { clipId });
  const { numerator, denominator } = table.timeBase;
  const seconds = table.ticks.map((ticks) => Math.round((ticks * numerator * 1e6) / denominator) / 1e6);
  expect(seconds).toEqual(truth.pts);
  expect(playback).toEqual(table);
  const [width, height] = truth.video.display_size;
  expect(media).toEqual([
    expect.objectContaining({ clipId, ready: true, trouble: null, proxy: false, width, height, constantRate: true }),
  ]);
  const kept = await ask(backend, 'media.resolve', { clipId, what: 'clip' });
  expect(path.dirname(kept.path)).toBe(path.join(folder, 'clips'));
  expect([hashOf(kept.path), hashOf(squatFile)]).toEqual([original, original]);
});

it('makes a poster and a filmstrip', async () => {
  const { backend, sessionId, clipId } = await libraryWithClips();
  const { media } = await ask(backend, 'review.get', { sessionId });
  expect(media[0]?.hasPoster).toBe(true);
  expect(media[0]?.filmstripPictures).toBeGreaterThan(7);
  for (const what of ['poster', 'filmstrip'] as const) {
    const picture = await ask(backend, 'media.resolve', { clipId, what });
    expect(picture.type).toBe('image/jpeg');
    // JPEG files begin with the bytes FF D8 FF (ISO/IEC 10918-1, from memory).
    expect([...readFileSync(picture.path).subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
  }
});

it('notices a clip that the session has already, and keeps one file for two sessions', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const { sessionId, entryId } = await sessionWithClips(backend);
  const renamed = path.join(temporaryFolder(), 'again.mp4');
  copyFileSync(squatFile, renamed);
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, paths: [renamed] });
  const twice = await jobEnd(backend, jobIds[0] ?? '');
  expect(twice).toMatchObject({ state: 'failed', sentence: expect.stringMatching(/already in this session/) });

  const { sessionId: elsewhere, entryId: entryElsewhere } = await newSession(backend);
  const shared = await ask(backend, 'clips.import', {
    sessionId: elsewhere,
    entryId: entryElsewhere,
    paths: [renamed],
  });
  expect(await jobEnd(backend, shared.jobIds[0] ?? '')).toMatchObject({ state: 'done' });
  expect(readdirSync(path.join(folder, 'clips'))).toHaveLength(1);
  const { media } = await ask(backend, 'review.get', { sessionId: elsewhere });
  expect(media[0]).toMatchObject({ ready: true, hasPoster: true });
});

it('says that a file is missing, and has it back when the same clip comes in again', async () => {
  const { backend, sessionId, clipId } = await libraryWithClips();
  const { path: kept } = await ask(backend, 'media.resolve', { clipId, what: 'clip' });
  rmSync(kept);
  const gone = await ask(backend, 'review.get', { sessionId });
  expect(gone.media[0]).toMatchObject({ ready: false, trouble: expect.objectContaining({ id: 'clipFileMissing' }) });
  const verdict = await ask(backend, 'library.verify', {});
  expect(verdict).toMatchObject({ sound: false, findings: [expect.stringMatching(/is missing/)] });

  const elsewhere = await newSession(backend);
  const { jobIds } = await ask(backend, 'clips.import', {
    sessionId: elsewhere.sessionId,
    entryId: elsewhere.entryId,
    paths: [squatFile],
  });
  await jobEnd(backend, jobIds[0] ?? '');
  const back = await ask(backend, 'review.get', { sessionId });
  expect(back.media[0]).toMatchObject({ ready: true, trouble: null });
});

it('makes a new entry for clips of an exercise, in the order they were given', async () => {
  const backend = await newLibrary();
  const { sessionId } = await newSession(backend);
  const { jobIds } = await ask(backend, 'clips.import', {
    sessionId,
    exercise: 'romanian-deadlift',
    paths: [hingeFile, squatFile],
  });
  for (const jobId of jobIds) await jobEnd(backend, jobId);
  const { review } = await ask(backend, 'review.get', { sessionId });
  const entries = review.entries.map((entry) => [entry.exercise, entry.clips.map((clip) => clip.name)]);
  expect(entries).toEqual([
    ['back-squat', []],
    ['romanian-deadlift', ['hinge-side.mp4', 'squat-side.mp4']],
  ]);
});
