import { expect, it } from 'vitest';
import { parseReview } from '../../../../engine/review/parseReview.ts';
import { writeReview } from '../../../../engine/review/writeReview.ts';
import { catalogue, handWritten } from '../sample.ts';

const at = (frame: number) => ({ frame, ticks: 512 * frame });
const line = {
  id: 'd1',
  shape: 'line',
  points: [
    { x: 1, y: -2.5 },
    { x: 300, y: 40 },
  ],
  from: at(30),
  to: at(60),
};
const every = [
  line,
  { ...line, id: 'd2', shape: 'angle', points: [...line.points, { x: 9, y: 9 }] },
  {
    ...line,
    id: 'd3',
    shape: 'plumb',
    points: [
      { x: 5, y: 1 },
      { x: 5, y: 700 },
    ],
  },
  { ...line, id: 'd4', shape: 'circle' },
  { ...line, id: 'd5', shape: 'stroke', points: [...line.points, ...line.points], to: { seconds: 9.5 } },
  { ...line, id: 'd6', shape: 'text', points: [{ x: 0, y: 0 }], text: 'Knees out' },
];

/** The sample with drawings on its first clip, of 300 frames. */
const withDrawings = (drawings: readonly unknown[]) => {
  const review = handWritten();
  const [entry] = review.entries;
  if (entry?.clips[0] === undefined) throw new Error('the sample has no clip');
  Object.assign(entry.clips[0], { drawings });
  return review;
};

it('keeps every shape through writing and reading', () => {
  const read = parseReview(withDrawings(every), catalogue);
  if (!read.ok) throw new Error(read.sentence);
  expect(read.review.entries[0]?.clips[0]?.drawings).toEqual(every);
  const text = writeReview(read.review);
  expect(parseReview(JSON.parse(text), catalogue)).toEqual(read);
});

it.each([
  [
    'a shape nobody knows',
    { ...line, shape: 'star' },
    'must have a shape, one of line, angle, plumb, circle, stroke, text',
  ],
  ['a line of three points', { ...line, points: [...line.points, { x: 1, y: 1 }] }, 'points'],
  [
    'a place that isn’t finite',
    {
      ...line,
      points: [
        { x: 1e9, y: 0 },
        { x: 0, y: 0 },
      ],
    },
    '100000 or less',
  ],
  ['a slanted plumb', { ...line, shape: 'plumb' }, 'isn’t vertical'],
  ['a frame that the clip lacks', { ...line, to: at(300) }, 'ends with frame 299'],
  ['an end before the beginning', { ...line, to: at(29) }, 'ends before it begins'],
  ['words on a line', { ...line, text: 'Hm' }, 'a field "text"'],
  ['words too long', { ...every[5], text: 'x'.repeat(201) }, 'longer than 200 characters'],
])('refuses %s in one sentence that says where', (_what, drawing, words) => {
  const read = parseReview(withDrawings([drawing]), catalogue);
  const sentence = read.ok ? '' : read.sentence;
  expect(sentence).toContain('entries[0].clips[0].drawings[0]');
  expect(sentence).toContain(words);
});

it('refuses an id that comes twice, and more than 500 drawings', () => {
  const twice = parseReview(withDrawings([line, line]), catalogue);
  expect(twice.ok ? '' : twice.sentence).toContain('has the id "d1", which another drawing has');
  const many = Array.from({ length: 501 }, (_, index) => ({ ...line, id: `d${index}` }));
  const crowded = parseReview(withDrawings(many), catalogue);
  expect(crowded.ok ? '' : crowded.sentence).toContain('more than 500 items');
});
