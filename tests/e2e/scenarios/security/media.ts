import assert from 'node:assert/strict';
import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import { rootFolder } from '../../../../electron/launch/folders.ts';
import type { App } from '../../harness/app.ts';
import { openFiles, processTree } from '../../harness/processes.ts';
import type { Report } from '../../harness/report.ts';
import { until } from '../../harness/until.ts';

const original = path.join(rootFolder, 'seeds', 'footage', 'squat-side.mp4');

type Answer = { readonly status: number; readonly headers: Record<string, string>; readonly bytes: readonly number[] };

function fetchInPage(app: App, address: string, method: string, range: string | null): Promise<Answer> {
  return app.page.evaluate(
    async ([url, verb, wanted]) => {
      const answer = await fetch(url, { method: verb, headers: wanted === null ? {} : { range: wanted } });
      const bytes = new Uint8Array(await answer.arrayBuffer());
      return { status: answer.status, headers: Object.fromEntries(answer.headers), bytes: [...bytes.slice(0, 64)] };
    },
    [address, method, range] as const,
  );
}

/** The media protocol gives registered clips in parts, and nothing else. */
export async function checkMedia(app: App, { check }: Report, clipId: string): Promise<void> {
  const clip = `/media/${clipId}`;
  const size = (await stat(original)).size;
  const content = await readFile(original);

  await check('a part of a clip arrives as 206 with the bytes asked for', async () => {
    const answer = await fetchInPage(app, clip, 'GET', 'bytes=100-149');
    assert.equal(answer.status, 206);
    assert.equal(answer.headers['content-range'], `bytes 100-149/${size}`);
    assert.equal(answer.headers['content-length'], '50');
    assert.equal(answer.headers['accept-ranges'], 'bytes');
    assert.equal(answer.headers['x-content-type-options'], 'nosniff');
    assert.deepEqual(answer.bytes, [...content.subarray(100, 150)]);
  });

  await check('the last bytes of a clip can be asked for from its end', async () => {
    const answer = await fetchInPage(app, clip, 'GET', 'bytes=-8');
    assert.equal(answer.status, 206);
    assert.deepEqual(answer.bytes, [...content.subarray(-8)]);
  });

  await check('a part outside the clip is answered 416', async () => {
    for (const range of [`bytes=${size}-`, 'bytes=9-3', 'bytes=0-1,4-5', 'lines=0-1', 'bytes=-0']) {
      const answer = await fetchInPage(app, clip, 'GET', range);
      assert.equal(answer.status, 416, range);
      assert.equal(answer.headers['content-range'], `bytes */${size}`);
    }
  });

  await check('only reading is allowed', async () => {
    for (const method of ['POST', 'PUT', 'DELETE']) {
      assert.equal((await fetchInPage(app, clip, method, null)).status, 405, method);
    }
    const head = await fetchInPage(app, clip, 'HEAD', null);
    assert.equal(head.status, 200);
    assert.equal(head.headers['content-length'], String(size));
    assert.deepEqual(head.bytes, []);
  });

  await check('nothing but registered clips and the built page is served', async () => {
    const tries = [
      '/media/unknown',
      '/media/..%2f..%2f..%2fetc%2fpasswd',
      '/media/%2e%2e/%2e%2e/package.json',
      `/media/${clipId}/poster`,
      '/pictures/unknown/poster',
      '/%2e%2e/main.cjs',
      '/..%2fmain.cjs',
      '/..%5cmain.cjs',
      '/%2e%2e%2f%2e%2e%2fpackage.json',
      '/assets/..%2f..%2fbackend.mjs',
      '/index.html%00.js',
      '/C:%5cWindows%5cwin.ini',
    ];
    for (const address of tries) assert.equal((await fetchInPage(app, address, 'GET', null)).status, 404, address);
  });

  await check('a clip can be sought anywhere and leaves no file open', async () => {
    const end = await app.page.evaluate(async (source) => {
      const video = document.createElement('video');
      video.muted = true;
      video.src = source;
      document.body.append(video);
      await new Promise((resolve, reject) => {
        video.addEventListener('loadedmetadata', resolve, { once: true });
        video.addEventListener('error', () => reject(new Error(video.error?.message)), { once: true });
      });
      for (let step = 0; step < 30; step += 1) {
        const sought = new Promise((resolve) => video.addEventListener('seeked', resolve, { once: true }));
        video.currentTime = video.duration * (((step * 7) % 30) / 31);
        await sought;
      }
      const end = video.seekable.end(0) === video.duration;
      video.removeAttribute('src');
      video.load();
      video.remove();
      return end;
    }, clip);
    assert.equal(end, true);
    await until('the clip to be closed', async () => {
      const files = await Promise.all((await processTree(app.processId)).map(openFiles));
      return !files.flat().some((file) => file.endsWith('.mp4'));
    });
  });
}
