import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import { reviewOnFrames } from '../../../../electron/backend/handover/package/playedReview.ts';
import { repsToLoop } from '../../../../electron/backend/handover/render/clips/repLoop.ts';
import { pictureNote } from '../../../../electron/backend/handover/render/pictures/stills.ts';
import { reviewOnSectionClocks } from '../../../../engine/edition/sectionClock.ts';
import { timedRows } from '../../../../engine/handover/pageData.ts';
import { showsAt } from '../../../../engine/review/drawings/drawing.ts';
import { momentTrouble } from '../../../../engine/review/entryTroubles.ts';
import type { Clip } from '../../../../engine/review/review.ts';
import { flagRows } from '../../../../engine/sheet/flagRows.ts';
import { frameStartUs } from '../../../../engine/time/frames.ts';
import { repFrames } from '../../../../renderer/player/repFrames.ts';
import { clip, entry, flag, review } from '../../../engine/reviews.ts';
import { ffmpeg } from '../media/clips.ts';
import { appFolder, ask, jobEnd, newLibrary, temporaryFolder } from '../workbench.ts';

const frames = 30;
const timeBase = { numerator: 1, denominator: 30 };

/** Thirty frames, the first of which the file shows after two seconds. */
const table = { timeBase, ticks: Array.from({ length: frames }, (_, frame) => 60 + frame), endTicks: 90 };
const facts = {
  ...{ codec: 'h264', width: 64, height: 64, rotationDeg: 0, frames, timeBase },
  ...{ startUs: 2_000_000, durationUs: 1_000_000 },
} as const satisfies Clip['facts'];

// Half a second after the first frame is frame 15, whatever time the file gives it.
const lateClip = clip({ facts, reps: [{ index: 1, start: { seconds: 0.2 }, end: { seconds: 0.9 } }] });
const lateFlag = flag({ criterion: 'depth', severity: 'correct', reps: [1], at: { seconds: 0.5 } });
const late = review(entry({ exercise: 'back-squat', clips: [lateClip], flags: [lateFlag] }));

describe('seconds of a review whose clip begins at two seconds', () => {
  const rows = flagRows(late, loadCatalogue(appFolder, 3));

  it('name one frame in the window, on sheet and start page, in stills, loops and handed-over reviews', () => {
    expect(timedRows(rows, table).map(({ moment }) => moment.atS)).toEqual([2.5]);
    expect(rows.map((row) => pictureNote(row, table, 'en')?.frame)).toEqual([15]);
    expect(repFrames(lateClip.reps, 1, table)).toEqual({ first: 6, last: 27 });
    expect(repsToLoop(lateClip, rows, table)).toMatchObject([{ firstFrame: 6, lastFrame: 27 }]);
    const drawn = { from: { seconds: 0.5 }, to: { seconds: 0.5 } };
    expect(table.ticks.map((_, frame) => showsAt(drawn, frame, table)).indexOf(true)).toBe(15);
    const handed = reviewOnFrames(
      late,
      new Map([['a', { footage: table, range: { firstFrame: 0, lastFrame: 29 }, table, facts }]]),
    );
    expect(handed.entries[0]?.flags[0]?.at).toEqual({ frame: 15, ticks: 75 });
  });

  it('are told from the section’s first frame where the clip is trimmed', () => {
    const section = { from: { frame: 6, ticks: 66 }, to: { frame: 29, ticks: 89 } };
    const trimmed = reviewOnSectionClocks({
      ...late,
      entries: late.entries.map((each) => ({ ...each, clips: [{ ...lateClip, section }] })),
    });
    const at = trimmed.entries[0]?.flags[0]?.at;
    expect(at && 'seconds' in at && at.seconds).toBeCloseTo(0.3, 9);
  });

  it('lie in the clip up to its length, and not up to the time that its file ends at', () => {
    expect(momentTrouble({ seconds: 1 }, lateClip, 'at')).toBeNull();
    expect(momentTrouble({ seconds: 1.5 }, lateClip, 'at')?.what).toMatch(/lasts 1\.000 s/);
  });
});

it('takes seconds in as frames of a file that begins at two seconds', async () => {
  const folder = temporaryFolder();
  const late = ['-output_ts_offset', '2', path.join(folder, 'late.mkv')];
  await ffmpeg('-f', 'lavfi', '-i', 'testsrc=size=64x64:rate=30:duration=1', '-pix_fmt', 'yuv420p', ...late);
  const file = path.join(folder, 'review.json');
  const { voice, trainee, session } = review();
  const seen = { id: 'a', name: 'Late', path: 'late.mkv', reps: [{ index: 1, start: { seconds: 0.2 } }] };
  const noted = { clip: 'a', criterion: 'depth', severity: 'correct', reps: [1], at: { seconds: 0.5 } };
  const entries = [{ id: 'e', exercise: 'back-squat', clips: [seen], flags: [noted], ticks: [] }];
  writeFileSync(file, JSON.stringify({ format: 'rackside-review', version: 4, voice, trainee, session, entries }));
  const backend = await newLibrary();
  const { sessionId, jobId } = await ask(backend, 'reviews.import', { path: file });
  expect(await jobEnd(backend, jobId)).toMatchObject({ state: 'done', sentence: '' });
  const { entries: taken } = (await ask(backend, 'review.get', { sessionId })).review;
  const clipId = taken[0]?.clips[0]?.id ?? '';
  const { table: ofFile } = await ask(backend, 'clips.frameTable', { clipId });
  expect(frameStartUs(ofFile, 0)).toBe(2_000_000);
  expect(taken[0]?.flags[0]?.at).toMatchObject({ frame: 15 });
  expect(taken[0]?.clips[0]?.reps[0]?.start).toMatchObject({ frame: 6 });
});
