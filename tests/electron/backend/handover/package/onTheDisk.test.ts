import { readdirSync, readlinkSync } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import path from 'node:path';
import { expect, it, vi } from 'vitest';
import { ask, jobEnd, newLibrary, newSession, temporaryFolder } from '../../workbench.ts';

/** Notes which files and folders are flushed to the disk, by the names they have then (Linux). */
async function watchFlushes(): Promise<Set<string>> {
  const flushed = new Set<string>();
  const handle = await open(import.meta.filename, 'r');
  const prototype: FileHandle = Object.getPrototypeOf(handle);
  await handle.close();
  const { sync } = prototype;
  vi.spyOn(prototype, 'sync').mockImplementation(function (this: FileHandle) {
    flushed.add(readlinkSync(`/proc/self/fd/${this.fd}`));
    return sync.call(this);
  });
  return flushed;
}

it.runIf(process.platform === 'linux').each([false, true])(
  'has everything on the disk before it says that it is handed over (zip: %s)',
  async (zip) => {
    const folder = temporaryFolder();
    const out = temporaryFolder();
    const backend = await newLibrary(folder);
    const { sessionId } = await newSession(backend);
    const flushed = await watchFlushes();
    const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder: out, options: { zip } });
    const [jobId = ''] = jobIds;
    expect(await jobEnd(backend, jobId)).toMatchObject({ state: 'done' });

    const unfinished = path.join(out, `.unfinished-${jobId}`);
    const [name = ''] = readdirSync(out);
    const inside = zip ? [] : readdirSync(path.join(out, name), { recursive: true, encoding: 'utf8' });
    const wanted = zip
      ? [`${unfinished}.zip`, out]
      : [unfinished, ...inside.map((each) => path.join(unfinished, each)), out];
    expect(wanted.filter((each) => !flushed.has(each))).toEqual([]);
    if (!zip) expect(inside.length).toBeGreaterThan(10);
    const handovers = path.join(folder, 'handovers');
    expect(flushed.has(handovers)).toBe(true);
    expect([...flushed].some((each) => each.startsWith(`${handovers}${path.sep}`))).toBe(true);
    vi.restoreAllMocks();
  },
);
