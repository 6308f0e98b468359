import { readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { heardFrom, loudness, record, shownFrames, voiceFile } from '../../narration/narrated.ts';
import { ask, backendOn, jobEnd, newLibrary, preparedLibrary, temporaryFolder } from '../../workbench.ts';
import { shortClip } from '../shortClip.ts';

it('takes a ticked narration along as a film, and another desk takes in the clip without the voice', async () => {
  const { folder, sessionId, clipId } = await preparedLibrary([await shortClip(temporaryFolder())]);
  const backend = backendOn(folder);
  const file = await voiceFile(temporaryFolder(), 'voice.webm', 1, [0.4, 0.7]);
  const narrationId = await record(backend, clipId, [
    { file, lastsUs: 1_000_000, shown: shownFrames([2, 3, 9], 300_000) },
  ]);
  await ask(backend, 'narrations.keep', { narrationId });
  const handedOver = async (narrated: boolean) => {
    const out = temporaryFolder();
    const options = { originals: true, clips: false, zip: false, narrated };
    const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder: out, options });
    expect(await jobEnd(backend, jobIds[0] ?? '')).toMatchObject({ state: 'done' });
    return path.join(out, readdirSync(out)[0] ?? '');
  };
  const filesIn = (place: string) => readdirSync(place, { recursive: true }).map(String);

  const plain = await handedOver(false);
  expect(filesIn(plain).filter((name) => /narrated|\.webm$/.test(name))).toEqual([]);
  const spoken = await handedOver(true);
  const films = filesIn(spoken).filter((name) => /narrated|\.webm$/.test(name));
  expect(films).toEqual([expect.stringMatching(/-narrated\.mp4$/)]);
  const [from, to] = heardFrom(await loudness(path.join(spoken, films[0] ?? '')), 0);
  expect(Math.abs(from - 400)).toBeLessThan(50);
  expect(Math.abs(to - 700)).toBeLessThan(50);

  const theirs = temporaryFolder();
  const receiver = await newLibrary(theirs);
  const { sessionId: received, jobId } = await ask(receiver, 'reviews.import', { path: spoken });
  expect(await jobEnd(receiver, jobId)).toMatchObject({ state: 'done' });
  const { review, media } = await ask(receiver, 'review.get', { sessionId: received });
  expect(media).toMatchObject([{ ready: true, frames: 24 }]);
  const [clip] = review.entries.flatMap(({ clips }) => clips);
  expect(await ask(receiver, 'narrations.get', { clipId: clip?.id ?? '' })).toBeNull();
  expect(readdirSync(path.join(theirs, 'sounds'))).toEqual([]);
  expect((await ask(receiver, 'library.verify', {})).findings).toEqual([]);
});
