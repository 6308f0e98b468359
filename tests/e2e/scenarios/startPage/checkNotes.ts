import assert from 'node:assert/strict';
import type { PageInBrowser } from '../../harness/browsers/pageInBrowser.ts';
import type { Report } from '../../harness/report.ts';
import { until } from '../../harness/until.ts';
import type { HandedOver } from './handedOver.ts';

/** The clip plays; every note jumps to its moment, by pointer and by keys, and says that it is the current one. */
export async function checkNotes(page: PageInBrowser, report: Report, handed: HandedOver): Promise<void> {
  const { notes, frameS } = handed;
  const near = (atS: number, note: number) =>
    assert.ok(Math.abs(atS - (notes[note]?.atS ?? Number.NaN)) <= frameS, `at ${atS}, its note at ${notes[note]?.atS}`);
  const isCurrent = (note: number) =>
    until(`note ${note + 1} to be shown`, async () => {
      const { current, seeking } = await page.evaluate(stateOf, null);
      return !seeking && current.join() === String(note);
    });

  await report.check(`${page.browser}: the clip plays from the file system, by keys alone`, async () => {
    await until('the clip', async () => (await page.evaluate(stateOf, null)).lastsS > 0);
    await until('the Tab key to reach the player', async () => {
      await page.press('Tab');
      return page.evaluate(() => document.activeElement?.matches('.play') ?? false, null);
    });
    await page.press('Space');
    await until('the clip to go on', async () => {
      const { atS, playing } = await page.evaluate(stateOf, null);
      return playing && atS > 0.3;
    });
    await page.press('Space');
    await until('the clip to stand', async () => !(await page.evaluate(stateOf, null)).playing);
  });

  await report.check(`${page.browser}: a click on each note seeks to its frame and marks it`, async () => {
    const { count } = await page.evaluate(stateOf, null);
    assert.equal(count, notes.length);
    for (const note of [...notes.keys()].reverse()) {
      await page.click('.note', note);
      await isCurrent(note);
      near((await page.evaluate(stateOf, null)).atS, note);
    }
  });

  await report.check(`${page.browser}: N and B go from note to note, and the focus goes along`, async () => {
    const walk = [...notes.keys()].slice(1);
    for (const [key, steps] of [
      ['n', walk],
      ['b', walk.map((note) => note - 1).reverse()],
    ] as const) {
      for (const note of steps) {
        await page.press(key);
        await isCurrent(note);
        const { atS, focused } = await page.evaluate(stateOf, null);
        near(atS, note);
        assert.equal(focused, note);
      }
    }
  });

  await report.check(`${page.browser}: the Tab key reaches every control, each with a visible focus`, async () => {
    await page.open(handed.address);
    // What is folded away is no stop.
    const wanted = await page.evaluate(
      () =>
        document.querySelectorAll('a, video[controls], button, select, summary, input').length -
        document.querySelectorAll('details:not([open]) a').length,
      null,
    );
    const reached = new Set<number>();
    // A player has several stops of its own.
    for (let presses = 0; presses < wanted + 40 && reached.size < wanted; presses += 1) {
      await page.press('Tab');
      const { place, outlined, name } = await page.evaluate(focusOf, null);
      if (place >= 0) reached.add(place);
      assert.ok(outlined, `${name} has no visible focus`);
    }
    assert.equal(reached.size, wanted);
  });
}

/** Runs in the page. */
function stateOf() {
  const video = document.querySelector('video');
  const buttons = [...document.querySelectorAll('.note')];
  return {
    atS: video?.currentTime ?? -1,
    lastsS: video !== null && video.readyState > 0 ? video.duration : 0,
    playing: video?.paused === false,
    seeking: video?.seeking === true,
    count: buttons.length,
    current: buttons.flatMap((button, place) => (button.getAttribute('aria-current') === 'true' ? [place] : [])),
    focused: buttons.findIndex((button) => button.matches(':focus')),
  };
}

/** Runs in the page. */
function focusOf() {
  const active = document.activeElement;
  const all = [...document.querySelectorAll('a, video[controls], button, select, summary, input')];
  const { outlineStyle, outlineWidth } = getComputedStyle(active ?? document.body);
  const onPage = active === null || active === document.body || active === document.documentElement;
  return {
    place: all.findIndex((element) => element.matches(':focus')),
    // The player draws the focus of its own parts; a list that scrolls may be a stop too.
    outlined: onPage || active.tagName === 'VIDEO' || (outlineStyle !== 'none' && outlineWidth !== '0px'),
    name: `${active?.tagName} ${active?.textContent?.slice(0, 40)}`,
  };
}
