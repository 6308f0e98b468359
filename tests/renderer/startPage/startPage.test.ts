// @vitest-environment happy-dom
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { writeIndexPage } from '../../../engine/handover/indexPage.ts';
import { clipInFolder, folderOf } from '../../engine/handover/folder.ts';
import { catalogue, draft, sessionOf } from '../../engine/letter/sample.ts';

const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const };
/** Remarks at frames 40 and 41 of 30 a second, the later one on the earlier rep. */
const review = sessionOf([
  draft({
    flags: [
      { ...short, reps: [2] },
      { ...short, reps: [1], note: 'Half way' },
    ],
  }),
]);

/** Opens a page as a browser does, and runs its script on it. */
async function open(rest: Parameters<typeof folderOf>[1] = {}) {
  const page = writeIndexPage(folderOf(review, rest));
  document.documentElement.lang = /<html lang="(\w+)"/.exec(page)?.[1] ?? '';
  document.documentElement.className = '';
  document.body.innerHTML = page.slice(page.indexOf('<header>'), page.lastIndexOf('<script>'));
  for (const video of document.querySelectorAll('video')) {
    Object.defineProperty(video, 'readyState', { value: 1 });
    video.scrollIntoView = () => undefined;
  }
  vi.resetModules();
  await import('../../../renderer/startPage/startPage.ts');
  const found = <Found extends Element>(selector: string): Found => {
    const element = document.querySelector<Found>(selector);
    if (element === null) throw new Error(`The page has no ${selector}.`);
    return element;
  };
  const video = found<HTMLVideoElement>('video');
  return {
    video,
    found,
    notes: [...document.querySelectorAll<HTMLElement>('.note')],
    readout: () => found('.readout').textContent,
    press: (key: string) => document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })),
    arriveAt: (atS: number) => {
      video.currentTime = atS;
      video.dispatchEvent(new Event('seeked'));
    },
  };
}

beforeEach(() => {
  vi.stubGlobal('VTTCue', class {});
  HTMLMediaElement.prototype.addTextTrack = () =>
    ({ addCue: () => undefined, mode: 'disabled' }) as unknown as TextTrack;
});

describe('the start page in a browser', () => {
  it('says that it is ready, and where the clip is', async () => {
    const { readout } = await open();
    expect(document.documentElement.classList.contains('ready')).toBe(true);
    expect(readout()).toMatch(/^0:00\.000/);
  });

  it('tells the clock of a clip that has a time of its own', async () => {
    // A card of one second, then the footage.
    const clockUs = clipInFolder().table.ticks.map((_, frame) => Math.max(0, Math.round(((frame - 30) * 1e6) / 30)));
    const { notes, readout, arriveAt } = await open({
      clips: new Map([['back-squat-clip', clipInFolder({ clockUs })]]),
    });
    arriveAt(0.5);
    expect(readout()).toMatch(/^0:00\.000/);
    arriveAt(2.51);
    expect(readout()).toMatch(/^0:01\.500/);
    // The notes are at frames 40 and 41 of the file.
    expect(notes.map((note) => note.querySelector('time')?.textContent)).toEqual(['0:00.333', '0:00.367']);
  });

  it('goes to a note on the very first frame before any other', async () => {
    const entries = review.entries.map((entry) => ({
      ...entry,
      flags: entry.flags.map((flag, index) => (index === 0 ? { ...flag, at: { frame: 0, ticks: 0 } } : flag)),
    }));
    const { video, notes, press } = await open({ review: { ...review, entries } });
    press('n');
    expect(video.currentTime).toBeCloseTo(0.5 / 30, 5);
    expect(notes.map((note) => note.hasAttribute('aria-current'))).toEqual([true, false]);
    press('n');
    expect(video.currentTime).toBeGreaterThan(1);
  });

  it('jumps into the middle of a note’s frame, tells the frame’s time, and marks the note', async () => {
    const { video, notes, readout } = await open();
    notes[1]?.click();
    expect(video.currentTime).toBeCloseTo(41.5 / 30, 5);
    expect(readout()).toMatch(/^0:01\.367/);
    expect(notes.map((note) => note.hasAttribute('aria-current'))).toEqual([false, true]);
  });

  it('goes to the next note and the one before by N and B, unless the keys are turned off', async () => {
    const { video, press, found } = await open();
    press('n');
    expect(video.currentTime).toBeCloseTo(40.5 / 30, 5);
    press('N');
    expect(video.currentTime).toBeCloseTo(41.5 / 30, 5);
    press('b');
    expect(video.currentTime).toBeCloseTo(40.5 / 30, 5);
    found<HTMLInputElement>('.keys input').click();
    press('n');
    expect(video.currentTime).toBeCloseTo(40.5 / 30, 5);
  });

  it('steps a frame on and back, and no further than the first', async () => {
    const { video, found } = await open();
    found<HTMLElement>('[data-step="frame 1"]').click();
    expect(video.currentTime).toBeCloseTo(1.5 / 30, 5);
    found<HTMLElement>('[data-step="frame -1"]').click();
    found<HTMLElement>('[data-step="frame -1"]').click();
    expect(video.currentTime).toBeCloseTo(0.5 / 30, 5);
  });

  it('takes a time that a browser rounded down for the frame that it shows', async () => {
    const { readout, arriveAt } = await open();
    arriveAt(41 / 30 - 0.0003);
    expect(readout()).toMatch(/^0:01\.367/);
  });

  it('draws the rep’s path up to the frame, with a gap where the load was not seen', async () => {
    const { found, arriveAt } = await open();
    // The first rep runs from frame 30; the load goes down a pixel a frame and is not seen in frame 50.
    arriveAt(52.5 / 30);
    expect(found('.load-path .done').getAttribute('d')).toMatch(/^M320 30L320 31.*L320 49M320 51L320 52$/);
    expect(found('.load-path .whole').getAttribute('d')).toMatch(/L320 60$/);
    expect(found('.load-path .now').getAttribute('cy')).toBe('52');
    arriveAt(70.5 / 30);
    expect(found('.load-path .done').getAttribute('d')).toBe('');
  });

  it('tells angles in tens of degrees, and in the page’s language', async () => {
    const { readout, arriveAt } = await open({ catalogue: translated(catalogue, 'de') });
    arriveAt(11.5 / 30);
    expect(readout()).toBe('0:00,367 · Knie 90°');
  });

  it('hides a layer that is switched off', async () => {
    const { found } = await open();
    found<HTMLInputElement>('[data-layer="load-path"]').click();
    expect(found<SVGGElement>('.load-path').style.display).toBe('none');
    found<HTMLInputElement>('[data-layer="load-path"]').click();
    expect(found<SVGGElement>('.load-path').style.display).toBe('');
  });

  it('works on clips of which nothing was measured', async () => {
    const bare = clipInFolder({ measurement: null, body: null });
    const { readout, notes } = await open({ clips: new Map([['back-squat-clip', bare]]) });
    notes[0]?.click();
    expect(readout()).toBe('0:01.333');
  });
});
