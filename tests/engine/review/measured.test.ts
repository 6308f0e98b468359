import { expect, it } from 'vitest';
import { parseReview } from '../../../engine/review/parseReview.ts';
import { writeReview } from '../../../engine/review/writeReview.ts';
import { catalogue, handWritten } from './sample.ts';

const [squats, other] = handWritten().entries;
const [set1, set2] = squats?.clips ?? [];

/** The hand-written review, its first clip as given. */
const withClip = (clip: object) =>
  JSON.stringify({ ...handWritten(), entries: [{ ...squats, clips: [clip, set2], flags: [], ticks: [] }, other] });

const setUp = {
  discDiameterM: 0.4,
  knownLength: { from: { xPx: 1, yPx: 2 }, to: { xPx: 3, yPx: 4.5 }, lengthM: 1.2 },
  facing: 'left',
  plumb: { top: { xPx: 10, yPx: 0 }, bottom: { xPx: 11, yPx: 400 } },
  clicks: [{ frame: 3, what: 'disc', at: { xPx: 100, yPx: 90 }, radiusPx: 50 }],
  depthClicks: [{ frame: 30, hipCrease: { xPx: 5, yPx: 6 }, kneeTop: { xPx: 7, yPx: 8 } }],
  backClicks: [{ frame: 30, points: [1, 2, 3].map((at) => ({ xPx: at, yPx: at })) }],
};

it('keeps which edges were measured and how a clip is set up, through writing and reading', () => {
  const reps = [{ index: 1, start: { frame: 10, ticks: 5120 }, end: { frame: 50, ticks: 25_600 }, measured: ['end'] }];
  const read = parseReview(JSON.parse(withClip({ ...set1, reps, setUp })), catalogue);
  if (!read.ok) throw new Error(read.sentence);
  const clip = read.review.entries[0]?.clips[0];
  expect(clip).toMatchObject({ reps, setUp });
  expect(parseReview(JSON.parse(writeReview(read.review)), catalogue)).toEqual(read);
});

it('says nothing of either where nothing is known', () => {
  const read = parseReview(JSON.parse(withClip({ ...set1 })), catalogue);
  if (!read.ok) throw new Error(read.sentence);
  expect(read.review.entries[0]?.clips[0]).not.toHaveProperty('setUp');
  expect(writeReview(read.review)).not.toMatch(/setUp|measured/);
});

it.each([
  ['an edge that no rep has', { reps: [{ index: 1, start: { seconds: 1 }, measured: ['middle'] }] }],
  ['a disc of no size', { setUp: { discDiameterM: 0 } }],
  [
    'a back of two points',
    { setUp: { backClicks: [{ frame: 1, points: [1, 2].map((at) => ({ xPx: at, yPx: at })) }] } },
  ],
])('refuses %s', (_, wrong) => {
  expect(parseReview(JSON.parse(withClip({ ...set1, ...wrong })), catalogue).ok).toBe(false);
});
