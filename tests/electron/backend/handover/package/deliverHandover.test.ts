import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import { expect, it, onTestFinished } from 'vitest';
import { deliverHandover } from '../../../../../electron/backend/handover/package/deliverHandover.ts';
import { fileSource } from '../../../../../electron/backend/handover/source/fileSource.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { handoverOptionsSchema } from '../../../../../electron/contract/handover.ts';
import type { Review } from '../../../../../engine/review/review.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { draft, sessionOf } from '../../../../engine/letter/sample.ts';
import { temporaryFolder } from '../../workbench.ts';

/** Hands a review without footage over at a moment; gives the folder. */
async function deliver(review: Review, handedAt: string): Promise<string> {
  const tools = await findMediaTools();
  const asked = { file: 'review.json', edition: editionOfReview(review), joints: false };
  const delivered = await deliverHandover(
    tools,
    { source: fileSource(tools, asked), options: v.parse(handoverOptionsSchema, {}), version: 1, handedAt },
    { folder: temporaryFolder(), workId: 'work' },
    { signal: new AbortController().signal, report: () => undefined },
  );
  return delivered.path;
}

it('gives every file a name of its own, whatever the clips are called', async () => {
  const names = ['Squat', 'Squat rep 1', 'Squat reps', 'Squat.mov'];
  const entries = names.map((name, index) => {
    const flags = [{ criterion: 'depth', severity: 'adjust' as const, reps: [1], note: `Said of ${index}` }];
    const entry = draft({ flags });
    const id = `clip-${index}`;
    return {
      ...entry,
      id: `entry-${index}`,
      clips: entry.clips.map((clip) => ({ ...clip, id, name })),
      flags: entry.flags.map((flag) => ({ ...flag, id: `flag-${index}`, clip: id })),
      ticks: [],
    };
  });
  const folder = await deliver(sessionOf(entries), '2026-03-09T12:00:00.000Z');
  const files = readdirSync(path.join(folder, 'notes'));
  expect(new Set(files.map((name) => name.toLowerCase())).size).toBe(3 * names.length);
  const saying = (index: number) =>
    files.filter((name) => readFileSync(path.join(folder, 'notes', name), 'utf8').includes(`Said of ${index}`)).sort();
  expect(saying(0)).toEqual(['squat.srt', 'squat.vtt']);
  for (const index of names.keys()) expect(saying(index).map((name) => path.extname(name))).toEqual(['.srt', '.vtt']);
});

it('asks to film a week from the day it is where the person is', async () => {
  const zone = process.env.TZ;
  onTestFinished(() => {
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  });
  process.env.TZ = 'America/Los_Angeles';
  // Eight in the evening of the 9th in the west, the 10th in London.
  const folder = await deliver(sessionOf([]), '2026-03-10T03:00:00.000Z');
  expect(readFileSync(path.join(folder, 'next-filming.ics'), 'utf8')).toMatch(/^DTSTART;VALUE=DATE:20260316/m);
});
