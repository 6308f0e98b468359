import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../../harness/accessible.ts';
import type { App } from '../../harness/app.ts';
import type { Bench } from '../../harness/bench.ts';
import { finishedJob } from '../../harness/jobs.ts';
import type { Report } from '../../harness/report.ts';
import { openReview, picture, shown } from '../../harness/reviewScreen.ts';
import type { Scenario } from '../../harness/scenario.ts';
import { until } from '../../harness/until.ts';
import { look, overlaps, type Seen } from './boxes.ts';
import { checkDivider } from './checkDivider.ts';
import { checkLargePicture } from './checkLargePicture.ts';

const sizes = [
  { width: 1280, height: 720 },
  { width: 1440, height: 900 },
  { width: 1920, height: 1080 },
  { width: 2560, height: 1440 },
] as const;

type Shape = 'landscape' | 'portrait';

/** How the review divides its window between picture and scorecard, at every size and for both shapes of clip. */
export const layout: Scenario = {
  name: 'layout',
  run: async (bench, report) => {
    const source = await checkerSource();
    const app = await bench.launch(await bench.demoFolder('layout'));
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id ?? '';
    await openReview(app, sessionId);
    const { review, media } = await app.ask('review.get', { sessionId });
    const clips = review.entries.flatMap((entry) => entry.clips);
    const portraitAt = clips.findIndex(({ id }) => media.some((one) => one.clipId === id && one.height > one.width));
    assert.ok(portraitAt > 0, 'the demo has a clip in portrait after one in landscape');
    const { jobIds } = await app.ask('measures.start', { clipIds: [clips[0]?.id ?? ''], again: false });
    for (const jobId of jobIds) await finishedJob(app, jobId);
    await page.getByTestId('curves-lane').waitFor();
    const goTo = async (shape: Shape): Promise<void> => {
      for (let step = 0; step < portraitAt; step += 1) {
        await page.keyboard.press(shape === 'portrait' ? 'Shift+PageDown' : 'Shift+PageUp');
        await picture(app);
      }
    };

    await checkSizes(app, bench, report, 'landscape');
    await page.setViewportSize(sizes[2]);
    await checkScreen(app, report, source, 'scorecard and measures side by side');
    await report.check('T takes the focus to the measures and back, where both stand', async () => {
      await page.keyboard.press('t');
      await page.locator('.measures-panel:focus').waitFor();
      await page.keyboard.press('t');
      await page.locator('.measures-panel:focus').waitFor({ state: 'detached' });
    });
    await page.setViewportSize(sizes[1]);
    await report.check('the table of measures fits beside the picture at 1440', async () => {
      await page.keyboard.press('t');
      await page.getByRole('grid', { name: 'Measures of each rep' }).waitFor();
      await bench.picture(app, '20-measures-1440');
      assert.deepEqual((await look(app)).tooWide, []);
      await page.keyboard.press('t');
    });
    await page.setViewportSize(sizes[0]);
    await page.keyboard.press('Shift+P');
    await page.getByRole('menu').waitFor();
    await bench.picture(app, '20-menu-1280');
    await checkScreen(app, report, source, 'the menu under the picture');
    await page.keyboard.press('Escape');
    await checkLargePicture(app, bench, report, source);
    await checkDivider(app, report, 'landscape');
    await goTo('portrait');
    await checkSizes(app, bench, report, 'portrait');
    await page.setViewportSize(sizes[0]);
    await checkDivider(app, report, 'portrait');

    // Zoomed to twice its size, a window of 1920 × 1080 has room for 960 × 540 points.
    await page.setViewportSize({ width: 960, height: 540 });
    for (const shape of ['portrait', 'landscape'] as const) {
      if (shape === 'landscape') await goTo('landscape');
      await report.check(`${shape}, text at twice its size: all is there below each other`, async () => {
        await page.evaluate(() => document.querySelector('main')?.scrollTo(0, 0));
        const seen = await settledLook(app);
        await bench.picture(app, `20-${shape}-large-text`);
        assert.deepEqual(overlaps({ ...seen, parts: omitStatus(seen.parts) }), []);
        assert.deepEqual(
          seen.tooWide.filter((room) => !room.includes('scroll')),
          [],
        );
        assert.ok(seen.content.height >= 0.45 * seen.window.height, `${seen.content.height} px high`);
      });
    }
    await app.close();
  },
};

/** The page scrolls under the status line there. */
function omitStatus({ status: _, ...others }: Seen['parts']): Seen['parts'] {
  return others;
}

async function settledLook(app: App): Promise<Seen> {
  await until('a settled picture', async () => (await shown(app)).settled);
  return look(app);
}

/** The picture as large as its side, one row of controls, a strip that can be used, nothing over anything else; by day and by night. */
async function checkSizes(app: App, bench: Bench, report: Report, shape: Shape): Promise<void> {
  for (const size of sizes) {
    await app.page.setViewportSize(size);
    await report.check(
      `${shape}, ${size.width} × ${size.height}: the picture fills its side, nothing overlaps`,
      async () => {
        const seen = await settledLook(app);
        for (const theme of ['dark', 'light'] as const) {
          await app.page.evaluate((chosen) => document.documentElement.setAttribute('data-theme', chosen), theme);
          await bench.picture(app, `20-${shape}-${theme}-${size.width}`);
        }
        assert.deepEqual(overlaps(seen), []);
        assert.deepEqual(seen.tooWide, []);
        checkPicture(seen, shape);
        checkStrip(seen);
        const both = await app.page.locator('.scorecard').and(app.page.locator(':visible')).count();
        assert.equal(both, 1, 'the scorecard shows');
        const measures = await app.page.getByRole('region', { name: 'Measures' }).count();
        assert.equal(measures, shape === 'landscape' && size.width >= 1600 ? 1 : 0, 'measures beside the scorecard');
      },
    );
  }
}

function checkPicture({ window, content, parts }: Seen, shape: Shape): void {
  const { stage } = parts;
  assert.ok(stage !== undefined);
  const filled = (content.width * content.height) / (stage.width * stage.height);
  assert.ok(filled >= 0.95, `the picture fills ${Math.round(filled * 100)} % of its stage`);
  assert.ok(content.height >= 0.5 * window.height, `${Math.round(content.height)} px high`);
  if (shape === 'landscape' && window.width === 1280) {
    assert.ok(content.width >= 0.55 * window.width, `${Math.round(content.width)} px wide`);
  }
  if (shape === 'portrait') {
    assert.ok(content.height >= 0.85 * window.height, `${Math.round(content.height)} px high`);
    assert.ok(
      (parts.divider?.left ?? Number.POSITIVE_INFINITY) <= content.width + 24,
      'the column is as wide as the picture',
    );
  }
}

function checkStrip({ window, parts, repBlocks, curves }: Seen): void {
  const { strip, controls } = parts;
  assert.ok(strip !== undefined && controls !== undefined);
  assert.ok(strip.width >= 0.5 * window.width, `a strip of ${Math.round(strip.width)} px`);
  assert.ok(controls.height <= 36, `controls of ${controls.height} px: more than one row`);
  assert.equal(repBlocks.length, 3);
  for (const block of repBlocks) assert.ok(block.width >= 40 && block.height >= 14, JSON.stringify(block));
  assert.ok(curves === null || curves.height >= 40, 'curves that can be read');
}
