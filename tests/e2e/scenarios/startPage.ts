import assert from 'node:assert/strict';
import { pathToFileURL } from 'node:url';
import { openChromium } from '../harness/browsers/chromium.ts';
import { openFirefox } from '../harness/browsers/firefox.ts';
import type { PageInBrowser } from '../harness/browsers/pageInBrowser.ts';
import { openWebKit } from '../harness/browsers/webkit.ts';
import type { Report } from '../harness/report.ts';
import type { Scenario } from '../harness/scenario.ts';
import { checkCues } from './startPage/checkCues.ts';
import { checkFrames } from './startPage/checkFrames.ts';
import { checkLayers } from './startPage/checkLayers.ts';
import { checkLooks, checkPreferences } from './startPage/checkLooks.ts';
import { checkNotes } from './startPage/checkNotes.ts';
import { checkPhone } from './startPage/checkPhone.ts';
import { film, handOverCounted, phone, variable } from './startPage/countedHandover.ts';
import { type HandedOver, pressWithNotes, squatAsFilmed } from './startPage/handedOver.ts';

/** The usual pause at each remark of a clip with notes in its picture, in seconds. */
const pauseS = 1.5;

/** What a trainee opens: the handover's start page from the file system, in browsers without Rackside. */
export const startPage: Scenario = {
  name: 'startPage',
  run: async (bench, report) => {
    const [filmed, usual] = await Promise.all([
      squatAsFilmed(bench.newFolder('filmed')),
      pressWithNotes(bench.newFolder('usual')),
    ]);
    const counted = await Promise.all([
      handOverCounted(bench.newFolder('counted'), [film, variable], ['--no-loops', '--originals', '--no-clips']),
      handOverCounted(bench.newFolder('counted-annotated'), [phone, variable], ['--no-loops', '--no-originals']),
    ]);

    await report.check('the clips of both handovers hold the remarks at the times of their sheets', async () => {
      for (const [{ notes, footageTimes, frameS }, pause] of [
        [filmed, 0],
        [usual, pauseS],
      ] as const) {
        assert.equal(notes.length, footageTimes.size);
        const ahead = notes.map(({ id, atS }, place) => atS - (footageTimes.get(id) ?? Number.NaN) - pause * place);
        for (const one of ahead) assert.ok(Math.abs(one - (pause === 0 ? 0 : (ahead[0] ?? 0))) <= frameS, ahead.join());
      }
    });

    const chromium = await openChromium({ ...bench.runtime, folder: bench.newFolder('chromium') });
    try {
      await checkBrowser(chromium, report, { filmed, usual });
      for (const one of counted) await checkFrames(chromium, report, one);
      await checkLooks(chromium, report, { handed: usual, name: 'as-usual' });
      await checkLooks(chromium, report, { handed: filmed, name: 'as-filmed' });
      await checkPhone(chromium, report, { handed: usual, name: 'as-usual' });
      await checkPhone(chromium, report, { handed: filmed, name: 'as-filmed' });
      await checkPreferences(chromium, report, usual);
    } finally {
      await chromium.close();
    }
    for (const [name, open] of [
      ['Firefox', () => openFirefox(bench.newFolder('firefox'))],
      ['WebKit', () => openWebKit(bench.newFolder('webkit'), bench.runtime.environment)],
    ] as const) {
      await report.check(`${name} is there, and comes to the end of its checks`, async () => {
        // A browser now and then doesn't come up on a busy machine.
        const page = await open().catch(open);
        try {
          await checkBrowser(page, report, { filmed, usual });
          for (const one of counted) await checkFrames(page, report, one);
        } finally {
          await page.close();
        }
      });
    }
  },
};

/** What has to work in every browser. */
async function checkBrowser(
  page: PageInBrowser,
  report: Report,
  { filmed, usual }: { readonly filmed: HandedOver; readonly usual: HandedOver },
): Promise<void> {
  for (const handed of [usual, filmed]) {
    await page.open(handed.address);
    await checkNotes(page, report, handed);
    if (handed === filmed) await checkLayers(page, report, handed);
    await report.check(
      `${page.browser}: nothing went wrong, and nothing was asked for outside of the folder`,
      async () => {
        assert.deepEqual(await page.complaints(), []);
        const folders = [usual, filmed].map(({ folder }) => `${pathToFileURL(folder).href}/`);
        const outside = (await page.addresses()).filter((address) => !folders.some((one) => address.startsWith(one)));
        assert.deepEqual(
          outside.filter((address) => !/^(about|data):/.test(address)),
          [],
        );
      },
    );
  }
  for (const handed of [usual, filmed]) await checkCues(page, report, handed);
}
