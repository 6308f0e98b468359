import { readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { hashFile } from '../../../../electron/backend/files/hashing.ts';
import { findFootageByContent } from '../../../../electron/backend/store/footage.ts';
import { lying } from '../../../../electron/backend/store/footageFiles.ts';
import { openLibrary } from '../../../../electron/backend/store/library.ts';
import { changeOnDisk, touchOnDisk } from '../changeOnDisk.ts';
import { appFolder, ask, backendOn, jobEnd, preparedLibrary, refusal, squatFile } from '../workbench.ts';

it('takes a touched clip silently, refuses a changed one with a sentence, and puts it back when it is added again', async () => {
  const { folder, sessionId, entryId, clipId } = await preparedLibrary();
  const clip = path.join(folder, 'clips', readdirSync(path.join(folder, 'clips'))[0] ?? '');
  touchOnDisk(clip);
  let backend = backendOn(folder);
  expect((await ask(backend, 'review.get', { sessionId })).media[0]).toMatchObject({ ready: true, trouble: null });
  expect((await ask(backend, 'media.resolve', { clipId, what: 'clip' })).path).toBe(clip);
  await backend.close();
  // It is not read again for that.
  const library = openLibrary(folder, appFolder);
  const known = library && findFootageByContent(library.reading, await hashFile(squatFile));
  expect(known?.file_modified_ms).toBe((await lying(clip))?.modifiedMs);
  library?.close();

  changeOnDisk(clip);
  backend = backendOn(folder);
  const { review, media } = await ask(backend, 'review.get', { sessionId });
  expect(media[0]).toMatchObject({ ready: false, trouble: { id: 'clipFileChanged' } });
  expect(review.entries[0]?.clips[0]?.id).toBe(clipId);
  const { code, sentence } = await refusal(backend, 'media.resolve', { clipId, what: 'clip' });
  expect([code, sentence]).toEqual(['bad-media', expect.stringMatching(/changed on the disk.*safe.*put back/)]);
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  expect(await jobEnd(backend, jobIds[0] ?? '')).toMatchObject({
    state: 'failed',
    sentence: expect.stringMatching(/changed on the disk/),
  });

  const again = await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths: [squatFile] });
  await jobEnd(backend, again.jobIds[0] ?? '');
  expect(await hashFile(clip)).toBe(await hashFile(squatFile));
  expect((await ask(backend, 'review.get', { sessionId })).media[0]).toMatchObject({ ready: true, trouble: null });
});
