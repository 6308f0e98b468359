import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { path as ffmpeg } from '@ffmpeg-installer/ffmpeg';
import { artefactsFolder } from '../../harness/bench.ts';
import type { PageInBrowser } from '../../harness/browsers/pageInBrowser.ts';
import { barsOf, numberOf } from '../../harness/countedClip.ts';
import type { Report } from '../../harness/report.ts';
import { until } from '../../harness/until.ts';
import { type CountedHandover, flaggedFrames } from './countedHandover.ts';

/** "Next note" stops at the flagged frame: its number is read from what is on screen, and its time is the one that is written. */
export async function checkFrames(page: PageInBrowser, report: Report, handed: CountedHandover): Promise<void> {
  await page.open(handed.address);
  for (const [place, clip] of handed.clips.entries()) {
    await report.check(`${page.browser}: "Next note" shows the flagged frame of ${clip.name}`, async () => {
      const [first = 0] = flaggedFrames;
      for (const frame of flaggedFrames) {
        await page.click(`#clip-${place + 1} [data-step="note 1"]`);
        const shown = await until(`frame ${frame} of ${clip.name} (the first is ${first})`, async () => {
          const state = await page.evaluate(stageOf, place + 1);
          if (state.seeking || state.readyState < 2) return null;
          const number = await numberOnScreen(page, state.picture, barsOf(clip).bits);
          return { ...state, number };
        });
        assert.equal(shown.number, numberOf(frame, clip));
        assert.equal(shown.readout, shown.listed, 'the clock beside the picture differs from the time of the note');
      }
    });
  }
}

type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** The number that the bars of a picture on screen say. */
async function numberOnScreen(page: PageInBrowser, box: Box, bits: number): Promise<number> {
  const file = path.join(artefactsFolder, `start-page-frame-${page.browser}.png`);
  await page.picture(file);
  // The upper part, where no player has its buttons.
  const part = [box.width, box.height * 0.2, box.left, box.top + box.height * 0.1].map(Math.round).join(':');
  const filter = `crop=${part},scale=${bits}:1:flags=area,format=gray`;
  const args = ['-loglevel', 'error', '-i', file, '-vf', filter, '-f', 'rawvideo', '-'];
  const { stdout } = await promisify(execFile)(ffmpeg, args, { encoding: 'buffer' });
  return [...stdout].reduce((sum, grey, bit) => sum + (grey > 110 ? 2 ** bit : 0), 0);
}

/** Runs in the page: what the nth clip shows, and where, in pixels of the screen. */
function stageOf(place: number) {
  const section = document.querySelector(`#clip-${place}`);
  const video = section?.querySelector('video');
  const { left = 0, top = 0, width = 0, height = 0 } = video?.getBoundingClientRect() ?? {};
  const scale = devicePixelRatio;
  return {
    seeking: video?.seeking !== false,
    readyState: video?.readyState ?? 0,
    picture: { left: left * scale, top: top * scale, width: width * scale, height: height * scale },
    readout: section?.querySelector('.readout')?.textContent ?? '',
    listed: section?.querySelector('.note[aria-current] time')?.textContent ?? 'none is current',
  };
}
