import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { rootFolder } from '../../../../electron/launch/folders.ts';
import type { PageInBrowser } from '../../harness/browsers/pageInBrowser.ts';
import type { Report } from '../../harness/report.ts';
import { until } from '../../harness/until.ts';
import type { HandedOver } from './handedOver.ts';

const truthSchema = v.object({
  disc_centre_px: v.array(v.tuple([v.number(), v.number()])),
  reps: v.array(v.object({ far_frame: v.number(), at_far: v.object({ deg: v.object({ knee_flexion: v.number() }) }) })),
});
const mostOffPx = 2;

/** Path and angles over the squat as it was filmed, held to what is known of that footage. */
export async function checkLayers(page: PageInBrowser, report: Report, { notes }: HandedOver): Promise<void> {
  const file = path.join(rootFolder, 'tests', 'footage', 'squat-side.truth.json');
  const truth = v.parse(truthSchema, JSON.parse(await readFile(file, 'utf8')));

  await report.check(
    `${page.browser}: the path lies where the disc is, to ${mostOffPx} px of the picture`,
    async () => {
      for (const [place, { atS }] of notes.entries()) {
        await page.click('.note', place);
        const frame = Math.round(atS * 30);
        const { line, now } = await until('the path', async () => {
          const seen = await page.evaluate(layersOf, null);
          return seen.atFrame === frame && !seen.seeking ? seen : null;
        });
        assert.ok(line.length > 30, `a path of ${line.length} points`);
        const off = [...line.entries()].map(([point, [x, y]]) => {
          const [discX, discY] = truth.disc_centre_px[frame - line.length + 1 + point] ?? [Number.NaN, Number.NaN];
          return Math.hypot(x - discX, y - discY);
        });
        assert.ok(Math.max(...off) <= mostOffPx, `${Math.max(...off)} px off`);
        assert.deepEqual(now, line.at(-1));
      }
    },
  );

  await report.check(`${page.browser}: the layers lie on the picture, whatever its size`, async () => {
    const { over, picture, viewBox, size } = await page.evaluate(layersOf, null);
    for (const [side, at] of over.entries()) assert.ok(Math.abs(at - (picture[side] ?? Number.NaN)) < 1);
    assert.equal(viewBox, `0 0 ${size.join(' ')}`);
  });

  await report.check(`${page.browser}: the angle of the knee is told in words and over the picture`, async () => {
    const [first] = truth.reps;
    assert.ok(first !== undefined);
    const { readout, labels } = await page.evaluate(layersOf, null);
    const [, told] = /Knie (\d+)°/.exec(readout) ?? [];
    // The last note is a few frames after the lowest point; tens of degrees are told, and joints are read to ten.
    assert.ok(Math.abs(Number(told) - first.at_far.deg.knee_flexion) <= 15, readout);
    assert.ok(labels.includes(`Knie ${told}°`), labels.join());
  });

  await report.check(`${page.browser}: path, angles and notes over the picture are switched one by one`, async () => {
    const shown = async () => (await page.evaluate(layersOf, null)).shown;
    const before = { 'load-path': true, body: true, cues: false };
    assert.deepEqual(await shown(), before);
    for (const layer of ['load-path', 'body', 'cues'] as const) {
      await page.click(`[data-layer="${layer}"]`);
      assert.deepEqual(await shown(), { ...before, [layer]: !before[layer] });
      await page.click(`[data-layer="${layer}"]`);
    }
    assert.deepEqual(await shown(), before);
  });
}

/** Runs in the page: what its first clip shows over the picture, in pixels of the picture. */
function layersOf() {
  const video = document.querySelector('video');
  const over = document.querySelector<SVGSVGElement>('.overlay');
  const done = over?.querySelector<SVGPathElement>('.load-path .done:last-of-type');
  const now = over?.querySelector<SVGCircleElement>('.load-path .now');
  const rectOf = (element: Element | null) => {
    const { left, top, right, bottom } = (element ?? document.body).getBoundingClientRect();
    return [left, top, right, bottom];
  };
  /** Where a point of a drawing lies in the picture. */
  const inPicture = (drawn: SVGGraphicsElement | null | undefined, x: number, y: number): [number, number] => {
    const onScreen = drawn?.getScreenCTM() ?? new DOMMatrix();
    const ofPicture = over?.getScreenCTM()?.inverse() ?? new DOMMatrix();
    const point = new DOMPoint(x, y).matrixTransform(ofPicture.multiply(onScreen));
    return [Math.round(point.x * 100) / 100, Math.round(point.y * 100) / 100];
  };
  const points = [...(done?.getAttribute('d') ?? '').matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)];
  const isShown = (name: string) => {
    const layer = over?.querySelector(name);
    return layer !== null && layer !== undefined && getComputedStyle(layer).display !== 'none';
  };
  return {
    atFrame: Math.floor((video?.currentTime ?? 0) * 30 + 0.01),
    seeking: video?.seeking !== false,
    line: points.map(([, x, y]) => inPicture(done, Number(x), Number(y))),
    now: inPicture(now, now?.cx.baseVal.value ?? 0, now?.cy.baseVal.value ?? 0),
    over: rectOf(over),
    picture: rectOf(video),
    viewBox: over?.getAttribute('viewBox') ?? '',
    size: [video?.videoWidth ?? 0, video?.videoHeight ?? 0],
    readout: document.querySelector('.readout')?.textContent ?? '',
    labels: [...document.querySelectorAll('.overlay text')].map(({ textContent }) => textContent ?? ''),
    shown: {
      'load-path': isShown('.load-path'),
      body: isShown('.body'),
      cues: [...(video?.textTracks ?? [])].some(({ mode }) => mode === 'showing'),
    },
  };
}
