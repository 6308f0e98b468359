import assert from 'node:assert/strict';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { artefactsFolder } from '../../harness/bench.ts';
import type { ChromiumPage } from '../../harness/browsers/chromium.ts';
import type { Report } from '../../harness/report.ts';
import { until } from '../../harness/until.ts';
import type { HandedOver } from './handedOver.ts';

const screens = [
  { name: 'phone', width: 390, height: 844 },
  { name: 'tablet', width: 768, height: 1024 },
] as const;

/** What a thumb hits (WCAG 2.2, success criterion 2.5.5): 44 by 44 CSS pixels. */
const thumbPx = 44;

/** Start page and documents on a phone and on a tablet: all within the screen, nothing cut, no control over a note. */
export async function checkPhone(
  page: ChromiumPage,
  report: Report,
  { handed, name }: { readonly handed: HandedOver; readonly name: string },
): Promise<void> {
  for (const { name: screen, width, height } of screens) {
    await page.resize(width, height);
    for (const document of ['letter', 'sheet', 'breakdown', 'filming-card'] as const) {
      await report.check(
        `${name}, ${screen}: the ${document} needs no scrolling sideways, and nothing is cut`,
        async () => {
          await page.open(pathToFileURL(path.join(handed.folder, `${document}.html`)).href);
          assert.deepEqual(await page.evaluate(cutOff, null), []);
          await page.picture(path.join(artefactsFolder, `${document}-${name}-${screen}.png`));
        },
      );
    }
    await report.check(
      `${name}, ${screen}: the page opens with grade and line, and no control lies over a note`,
      async () => {
        await page.open(handed.address);
        await until('the clip', () =>
          page.evaluate(() => (document.querySelector('video')?.readyState ?? 0) > 1, null),
        );
        const opening = await page.evaluate(opened, null);
        assert.ok(opening.gradeBottom < opening.videoTop, JSON.stringify(opening));
        assert.ok(opening.videoTop < height, `the clip begins at ${opening.videoTop}`);
        assert.ok(opening.documentsTop > opening.lastClipBottom, JSON.stringify(opening));
        assert.equal(opening.ownControls, true);
        assert.deepEqual(await page.evaluate(cutOff, null), []);
        assert.deepEqual(await page.evaluate(textUnderControls, null), []);
        for (const { label, width: wide, height: high } of await page.evaluate(noteSteps, null)) {
          assert.ok(wide >= thumbPx && high >= thumbPx, `${label}: ${wide} by ${high}`);
        }
        await page.click('.controls [data-step="note 1"]');
        await until('the note', () =>
          page.evaluate(() => document.querySelector('.note[aria-current]') !== null, null),
        );
        assert.deepEqual(await page.evaluate(textUnderControls, null), []);
      },
    );
  }
}

/** Runs in the page: what reaches beyond the screen, what has to be scrolled sideways, and what is cut. */
function cutOff(): string[] {
  const { clientWidth, scrollWidth } = document.documentElement;
  const found = scrollWidth > clientWidth ? [`the page: ${scrollWidth} of ${clientWidth}`] : [];
  for (const element of document.querySelectorAll('body *')) {
    const { left, right, width } = element.getBoundingClientRect();
    // The head of a table and what is only heard are there for those who hear the page.
    if (width <= 1 || element.closest('.overlay, thead, .heard') !== null) continue;
    const name = `${element.tagName}.${element.getAttribute('class')}#${element.id}`;
    if (left < -1 || right > clientWidth + 1) found.push(`${name}: ${left} to ${right}`);
    const hides = getComputedStyle(element).overflowX !== 'visible';
    if (hides && element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0) found.push(`${name}: cut`);
  }
  return found;
}

/** Runs in the page. */
function opened() {
  const at = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
  const clips = [...document.querySelectorAll('section.clip')];
  return {
    gradeBottom: at('.personal')?.bottom ?? at('.mark')?.bottom ?? Number.NaN,
    videoTop: at('video')?.top ?? Number.NaN,
    lastClipBottom: clips.at(-1)?.getBoundingClientRect().bottom ?? Number.NaN,
    documentsTop: at('#files')?.top ?? Number.NaN,
    ownControls: document.querySelector('video')?.controls === false,
  };
}

/** Runs in the page: pairs of a control of the player and words of a note that lie over one another, or over the picture. */
function textUnderControls(): string[] {
  const boxOf = (element: Element) => element.getBoundingClientRect();
  const meet = (one: DOMRect, other: DOMRect) =>
    one.left < other.right - 1 &&
    other.left < one.right - 1 &&
    one.top < other.bottom - 1 &&
    other.top < one.bottom - 1;
  // What has been scrolled under the picture is no longer to be read.
  const hidden = (box: DOMRect) =>
    [...document.querySelectorAll('.stage')].some(
      (stage) => box.top < boxOf(stage).bottom - 1 && box.bottom > boxOf(stage).top,
    );
  const words = [...document.querySelectorAll('.notes li > *, .readout, .marks')].filter(
    (each) => each.closest('.stage') !== null || !hidden(boxOf(each)),
  );
  const pictures = [...document.querySelectorAll('.picture')];
  const controls = [...document.querySelectorAll('.controls > *, .tools button, .tools select')];
  return controls.flatMap((control) =>
    [...words, ...pictures]
      .filter((other) => !control.contains(other) && meet(boxOf(control), boxOf(other)))
      .map((other) => `${control.textContent} over ${other.className} ${other.textContent?.slice(0, 30)}`),
  );
}

/** Runs in the page. */
function noteSteps() {
  return [...document.querySelectorAll('.controls button')].map((button) => {
    const { width, height } = button.getBoundingClientRect();
    return { label: button.textContent ?? '', width, height };
  });
}
