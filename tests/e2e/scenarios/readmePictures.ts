import assert from 'node:assert/strict';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { run } from '../../electron/cli/runCommand.ts';
import { openChromium } from '../harness/browsers/chromium.ts';
import { keepForReadme } from '../harness/readmePicture.ts';
import { goToFrame, openReview, picture } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** The depth of the second squat, held: what the demo praises. */
const heldFrame = 219;

/** The README's pictures, made from the demo by the real app; run by its name alone. */
export const readmePictures: Scenario = {
  name: 'readmePictures',
  run: async (bench, report) => {
    const folder = bench.newFolder('readme');
    await report.check('the demo is made', async () => {
      assert.equal((await run(['demo', '--out', folder])).code, 0);
    });

    await report.check('pictures of the review and of its measures', async () => {
      const app = await bench.launch(folder);
      const { sessions } = await app.ask('desk.sessions', {});
      await openReview(app, sessions[0]?.id ?? '');
      await app.page.getByRole('button', { name: 'No more hints' }).click();
      await goToFrame(app, heldFrame);
      await picture(app);
      await keepForReadme(await bench.picture(app, 'readme-review'), 'review');
      await app.page.keyboard.press('t');
      await app.page.getByRole('grid', { name: 'Measures of each rep' }).waitFor();
      await picture(app);
      await keepForReadme(await bench.picture(app, 'readme-measures'), 'measures');
      await app.close();
    });

    await report.check('pictures of the letter, and of the start page on a phone', async () => {
      const page = await openChromium({ ...bench.runtime, folder: bench.newFolder('readme-chromium') });
      const shoot = async (file: string, name: 'letter' | 'phone', [width, height]: readonly [number, number]) => {
        await page.resize(width, height);
        await page.open(pathToFileURL(path.join(folder, file)).href);
        await until('the faces and pictures', () => page.evaluate(hasLoaded, null));
        await page.evaluate(withoutScrollbar, null);
        const shot = path.join(folder, `${name}.png`);
        await page.picture(shot);
        await keepForReadme(shot, name);
      };
      try {
        await shoot('letter.html', 'letter', [794, 1123]);
        await shoot('index.html', 'phone', [390, 844]);
      } finally {
        await page.close();
      }
    });
  },
};

/** Runs in the page. */
function withoutScrollbar(): void {
  document.documentElement.style.overflow = 'hidden';
}

/** Runs in the page. */
function hasLoaded(): boolean {
  const video = document.querySelector('video');
  const pictures = [...document.images].filter(({ loading }) => loading !== 'lazy');
  return (
    document.fonts.status === 'loaded' &&
    pictures.every(({ complete }) => complete) &&
    (video === null || video.readyState > 0)
  );
}
