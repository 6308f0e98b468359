import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import { drag } from '../harness/drag.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import { goToFrame, openReview, shownAt } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** Turning, mirroring, cropping, brightening, trimming and splitting a clip. */
export const framing: Scenario = {
  name: 'framing',
  run: async (bench, report) => {
    const source = await checkerSource();
    const app = await bench.launch(bench.newFolder('framing'));
    const { page } = app;
    const { sessionId, clipId } = await addOneClip(app, footage.squat);
    await page.reload();
    await openReview(app, sessionId);
    const clips = async () => (await app.ask('review.get', { sessionId })).review.entries[0]?.clips ?? [];
    const kept = async () => (await clips()).find(({ id }) => id === clipId);
    const panel = page.getByRole('region', { name: 'Turn, crop and trim', exact: true });
    const shape = () =>
      page.getByTestId('framed-window').evaluate((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width / height;
      });

    await report.check('a key takes the panel out; a turn stands the picture on its side', async () => {
      await goToFrame(app, 40);
      await page.keyboard.press('Shift+K');
      await panel.waitFor();
      await bench.picture(app, '18-framing');
      await checkScreen(app, report, source, 'framing');
      assert.ok((await shape()) > 1);
      await panel.getByRole('button', { name: /Turn right/ }).click();
      await until('an upright shape', async () => (await shape()) < 1);
      await bench.picture(app, '18-framing-turned');
      await panel.getByRole('button', { name: /Turn left/ }).click();
      await until('the first shape', async () => (await shape()) > 1);
    });

    await report.check('a box that is dragged is the part that stays, also in a mirror', async () => {
      await panel.getByRole('button', { name: /Mirror/ }).click();
      await until('a mirror', async () => (await kept())?.framing?.mirrored === true);
      await drag(app, [300, 100], [700, 500]);
      const crop = await until('a crop', async () => (await kept())?.framing?.crop ?? null);
      // The points are told in the picture's own pixels, and the browser says where they lie in the mirror.
      assert.ok(Math.abs(crop.leftPx - 300) <= 3, `${crop.leftPx}`);
      assert.ok(Math.abs(crop.topPx - 100) <= 3, `${crop.topPx}`);
      assert.ok(Math.abs(crop.widthPx - 400) <= 4, `${crop.widthPx}`);
      await bench.picture(app, '18-framing-crop');
      await page.getByRole('button', { name: 'Part of the picture to keep' }).focus();
      await page.keyboard.press('ArrowLeft');
      await until(
        'it moved to the right of the picture',
        async () => ((await kept())?.framing?.crop?.leftPx ?? 0) > crop.leftPx,
      );
    });

    await report.check('brightness goes by keys', async () => {
      await page.getByTestId('brightness').focus();
      for (let step = 0; step < 4; step += 1) await page.keyboard.press('ArrowRight');
      await until('more light', async () => ((await kept())?.framing?.brightness ?? 1) > 1.3);
    });

    await report.check('the clip is trimmed at the frame on screen, and the strip shows that alone', async () => {
      await panel.getByRole('button', { name: /Start here/ }).click();
      await until('a section', async () => (await kept())?.section?.from.frame === 40);
      await page.getByTestId('strip').getByRole('slider').first().press('Home');
      // Frame 40 of the footage is the clip's first.
      await shownAt(app, 0);
      await page.keyboard.press('Shift+ArrowLeft');
      assert.equal(await page.getByTestId('frame-number').textContent(), '0');
      assert.match((await page.getByTestId('media-time').textContent()) ?? '', /^0:00[.,]000$/);
      await bench.picture(app, '18-framing-trimmed');
    });

    await report.check('a clip is split in two at the frame on screen', async () => {
      await goToFrame(app, 80);
      await panel.getByRole('button', { name: /Split here/ }).click();
      await until('two clips', async () => (await clips()).length === 2);
      assert.deepEqual(
        (await clips()).map(({ section }) => [section?.from.frame, (section?.to.frame ?? 0) < 120]),
        [
          [40, true],
          [120, false],
        ],
      );
      await bench.picture(app, '18-framing-split');
    });
  },
};
