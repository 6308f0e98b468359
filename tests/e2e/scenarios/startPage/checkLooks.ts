import assert from 'node:assert/strict';
import path from 'node:path';
import { checkerSource, findingsInPage } from '../../harness/accessible.ts';
import { artefactsFolder } from '../../harness/bench.ts';
import type { ChromiumPage } from '../../harness/browsers/chromium.ts';
import type { Report } from '../../harness/report.ts';
import { until } from '../../harness/until.ts';
import type { HandedOver } from './handedOver.ts';

const screens = [
  { name: 'wide', width: 1300, height: 900 },
  { name: 'phone', width: 390, height: 844 },
] as const;

/** The page on wide and narrow screens, by day and by night: sound for a checker, nothing beside the screen. */
export async function checkLooks(
  page: ChromiumPage,
  report: Report,
  { handed, name }: { readonly handed: HandedOver; readonly name: string },
): Promise<void> {
  const source = await checkerSource();
  for (const { name: screen, width, height } of screens) {
    await page.resize(width, height);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.prefer({ colorScheme });
      await page.open(handed.address);
      await report.check(
        `${name}, ${screen}, ${colorScheme}: nothing serious or critical, all within the screen`,
        async () => {
          await until('the clip', () =>
            page.evaluate(() => (document.querySelector('video')?.readyState ?? 0) > 1, null),
          );
          await page.picture(path.join(artefactsFolder, `start-page-${name}-${screen}-${colorScheme}-top.png`));
          await page.click('.note', 1);
          await until('the note', () => page.evaluate(hasSettled, null));
          await page.runSource(source);
          const findings = await page.evaluate(findingsInPage, null);
          assert.deepEqual(
            findings.filter(({ impact }) => impact === 'serious' || impact === 'critical'),
            [],
          );
          assert.deepEqual(await page.evaluate(besideTheScreen, null), []);
          await page.picture(path.join(artefactsFolder, `start-page-${name}-${screen}-${colorScheme}.png`));
        },
      );
    }
  }
  await page.prefer({ colorScheme: 'light' });
}

/** Whoever wants little motion gets none; whoever lets no script run still has clip, notes and files. */
export async function checkPreferences(page: ChromiumPage, report: Report, handed: HandedOver): Promise<void> {
  const scrolling = () => page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior, null);
  await page.resize(1300, 900);
  await page.open(handed.address);

  await report.check('where little motion is wanted, nothing glides', async () => {
    await page.prefer({ reducedMotion: 'no-preference' });
    assert.equal(await scrolling(), 'smooth');
    await page.prefer({ reducedMotion: 'reduce' });
    assert.equal(await scrolling(), 'auto');
    const moving = await page.evaluate(() => document.getAnimations().length, null);
    assert.equal(moving, 0);
  });

  await report.check('with scripts off there are clip, notes and files, and nothing that does nothing', async () => {
    await page.scripts('off');
    await page.open(handed.address);
    const seen = await until('the clip', async () => {
      const now = await page.evaluate(withoutScripts, null);
      return now.ready ? now : null;
    });
    await page.picture(path.join(artefactsFolder, 'start-page-without-scripts.png'));
    await page.scripts('on');
    assert.ok(seen.controls, 'the player has no controls');
    assert.match(seen.words, /Scripts are off|Skripte sind aus/);
    assert.equal(seen.notes, handed.notes.length);
    assert.ok(seen.links > 5);
    assert.deepEqual(seen.idle, []);
  });
}

/** Runs in the page. */
function hasSettled(): boolean {
  const video = document.querySelector('video');
  return video?.seeking === false && video.readyState > 3 && document.querySelector('.note[aria-current]') !== null;
}

/** Runs in the page: what can't be seen without scrolling sideways. */
function besideTheScreen(): string[] {
  const { clientWidth, scrollWidth } = document.documentElement;
  const beside = [...document.querySelectorAll('body *')].filter((element) => {
    const { left, right, width } = element.getBoundingClientRect();
    return width > 0 && element.closest('.overlay') === null && (left < -1 || right > clientWidth + 1);
  });
  const names = beside.map(({ tagName, className }) => `${tagName}.${className}`);
  return scrollWidth > clientWidth ? [`${scrollWidth} of ${clientWidth}`, ...names] : names;
}

/** Runs in the page. */
function withoutScripts() {
  const isSeen = (element: Element) => element.getClientRects().length > 0;
  const video = document.querySelector('video');
  return {
    ready: (video?.readyState ?? 0) > 0,
    controls: video?.controls === true,
    words: document.querySelector('noscript')?.textContent ?? '',
    notes: [...document.querySelectorAll('.notes li')].filter(isSeen).length,
    links: [...document.querySelectorAll('a')].filter(isSeen).length,
    idle: [...document.querySelectorAll('button, select, input')]
      .filter((control) => isSeen(control) && getComputedStyle(control).pointerEvents !== 'none')
      .map(({ outerHTML }) => outerHTML.slice(0, 80)),
  };
}
