import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { PageInBrowser } from '../../harness/browsers/pageInBrowser.ts';
import { type Cue, cuesOf } from '../../harness/cuesOf.ts';
import type { Report } from '../../harness/report.ts';
import type { HandedOver } from './handedOver.ts';
import { flagsOfSheet } from './writtenNotes.ts';

const mostMovedS = 4;

/** The folder's timed notes as the browser's own parser reads them, held to the folder's sheet and to the page. */
export async function checkCues(page: PageInBrowser, report: Report, handed: HandedOver): Promise<void> {
  const { folder, notes } = handed;
  const file = (notes[0]?.clip ?? '').replace(/\.mp4$/, '.vtt');
  const words = await readFile(path.join(folder, file), 'utf8');
  await page.open(handed.address);
  const onPage = await page.evaluate(cuesOnPage, null);
  // The page's own policy lets no text track in, nor do browsers from the file system: an empty page is given the words.
  await page.open(handed.emptyAddress);
  const cues = await page.evaluate(cuesOf, words);

  await report.check(`${page.browser}: WebVTT notes are read whole by the browser's own parser`, async () => {
    assert.equal(cues.length, words.match(/-->/g)?.length);
    for (const [place, { startS, endS, text }] of cues.entries()) {
      assert.ok(endS > startS && startS >= (cues[place - 1]?.endS ?? 0));
      assert.ok(text.trim().length > 0);
    }
  });

  await report.check(`${page.browser}: they are the remarks of the sheet, one to one`, async () => {
    const flags = await flagsOfSheet(folder);
    const idOf = ({ id }: Cue) => id.replace(/^note-/, '').replace(/-\d+$/, '');
    assert.deepEqual(new Set(cues.map(idOf)), new Set(flags.map(({ id }) => id)));
    const flat = (text: string) => text.replace(/\s+/g, ' ');
    assert.deepEqual(
      [...new Set(cues.map(idOf))],
      notes.map(({ id }) => id),
    );
    for (const { id, atS } of notes) {
      const own = cues.filter((cue) => idOf(cue) === id);
      const flag = flags.find((one) => one.id === id);
      const said = flat(own.map(({ text }) => text).join(' '));
      for (const part of [flag?.criterionName, flag?.note, flag?.cue])
        assert.ok(part !== undefined && said.includes(flat(part)), `"${part}" is not in "${said}"`);
      // Notes that are close to each other make room for each other, so that each can be read.
      assert.ok(Math.abs((own[0]?.startS ?? Number.NaN) - atS) <= mostMovedS, `${id}: ${own[0]?.startS}`);
    }
  });

  await report.check(`${page.browser}: the page holds the same over its clip`, async () => {
    const bare = (all: readonly Cue[]) =>
      all.map(({ startS, endS, text }) => [startS.toFixed(3), endS.toFixed(3), text].join(' '));
    assert.deepEqual(bare(onPage), bare(cues));
  });
}

/** Runs in the page. */
function cuesOnPage(): Cue[] {
  const tracks = [...(document.querySelector('video')?.textTracks ?? [])].filter(({ kind }) => kind === 'captions');
  return tracks.flatMap(({ cues }) =>
    [...(cues ?? [])].map((cue) => ({
      id: cue.id,
      startS: cue.startTime,
      endS: cue.endTime,
      text: 'text' in cue ? String(cue.text) : '',
    })),
  );
}
