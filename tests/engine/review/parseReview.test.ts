import { expect, it } from 'vitest';
import { parseReview } from '../../../engine/review/parseReview.ts';
import { catalogue, handWritten, type Loose, spoilt } from './sample.ts';

const sentenceFor = (input: unknown): string => {
  const parsed = parseReview(input, catalogue);
  return parsed.ok ? '' : parsed.sentence;
};

it('fills in what a person leaves out', () => {
  const parsed = parseReview(handWritten(), catalogue);
  expect(parsed).toMatchObject({
    ok: true,
    review: {
      voice: 'coach',
      trainee: { name: 'Robin Vale', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
      session: { id: 'session', title: '', notes: '', painNote: '' },
      entries: [
        { clips: [{ realTimeFactor: 1 }, { view: null, realTimeFactor: 1, reps: [] }] },
        { flags: [], ticks: [] },
      ],
    },
  });
});

it('gives flags without an id one that no other flag has, and lists each rep once, ascending', () => {
  const parsed = parseReview(handWritten(), catalogue);
  const entry = parsed.ok ? parsed.review.entries[0] : undefined;
  expect(entry?.flags.map((flag) => [flag.id, flag.reps])).toEqual([
    ['flag-2', [1, 3]],
    ['flag-1', 'set'],
    ['flag-3', 'set'],
  ]);
  expect(entry?.ticks[0]?.reps).toEqual([1, 2]);
});

const contradictions: readonly [string, (review: Loose) => void, string][] = [
  [
    'a rep that is not marked',
    (r) => (r.entries[0].flags[0].reps = [9]),
    'entries[0].flags[0] names rep 9, but clip "a" has 5 reps.',
  ],
  [
    'a rep of a clip without reps',
    (r) => (r.entries[0].flags[1].reps = [1]),
    'entries[0].flags[1] names rep 1, but clip "b" has no reps marked: mark them or write "set".',
  ],
  [
    'a tick on such a rep',
    (r) => (r.entries[0].ticks[0].reps = [6]),
    'entries[0].ticks[0] names rep 6, but clip "a" has 5 reps.',
  ],
  [
    'an unknown exercise',
    (r) => (r.entries[1].exercise = 'moon-walk'),
    'entries[1] names the exercise "moon-walk", which the library doesn\'t hold: correct it or add it there.',
  ],
  [
    'a criterion the rubric lacks',
    (r) => (r.entries[0].flags[0].criterion = 'style'),
    'entries[0].flags[0] names the criterion "style", which the rubric lacks: use depth, ',
  ],
  [
    'a criterion the exercise is not judged by',
    (r) => (r.entries[1].ticks = [{ clip: 'a', criterion: 'depth', reps: 'set' }]),
    'entries[1].ticks[0] names the criterion "depth", which this exercise is not judged by: use eccentricTempo.',
  ],
  [
    'a fault of another criterion',
    (r) => (r.entries[0].flags[0].fault = 'headUp'),
    'entries[0].flags[0] names the fault "headUp", which this exercise doesn\'t know for depth',
  ],
  [
    'a clip of another entry',
    (r) => (r.entries[1].ticks = [{ clip: 'a', criterion: 'eccentricTempo', reps: 'set' }]),
    'entries[1].ticks[0] names the clip "a", which its entry doesn\'t hold',
  ],
  ['an entry id twice', (r) => (r.entries[1].id = 'e1'), 'entries[1] has the id "e1", which another entry has'],
  [
    'a clip id twice',
    (r) => (r.entries[1].clips = [{ id: 'b', name: 'Again' }]),
    'entries[1].clips[0] has the id "b", which another clip has',
  ],
  [
    'a flag id twice',
    (r) => (r.entries[0].flags[2].id = 'flag-1'),
    'entries[0].flags[2] has the id "flag-1", which another flag has',
  ],
  [
    'a rep twice',
    (r) => (r.entries[0].clips[0].reps[1].index = 1),
    'entries[0].clips[0].reps[1] is rep 1 for the second time',
  ],
  [
    'the stretched end before the start',
    (r) => (r.entries[0].clips[0].reps[0].stretchedEnd = { frame: 1, ticks: 512 }),
    'entries[0].clips[0].reps[0] has its stretchedEnd before its start',
  ],
  [
    'the end before the stretched end, in other units',
    (r) => (r.entries[0].clips[0].reps[0].end = { seconds: 0.5 }),
    'entries[0].clips[0].reps[0] has its end before its stretchedEnd',
  ],
  ['reps out of order', (r) => (r.entries[0].clips[0].reps[1].index = 9), 'has rep 9 starting before rep 5'],
  [
    'a frame beyond the clip',
    (r) => (r.entries[0].flags[0].at = { frame: 300, ticks: 0 }),
    'entries[0].flags[0] is at frame 300, but clip "a" ends with frame 299.',
  ],
  [
    'a rep edge beyond the clip',
    (r) => (r.entries[0].clips[0].reps[4].end = { frame: 301, ticks: 512 * 301 }),
    'entries[0].clips[0].reps[4].end is at frame 301',
  ],
  [
    'seconds beyond the clip',
    (r) => (r.entries[0].flags[2].at = { seconds: 10.1 }),
    'entries[0].flags[2] is at 10.100 s, but clip "a" lasts 10.000 s.',
  ],
  [
    'a rubric that is not here',
    (r) => (r.rubric = { id: 'rackside', version: 7 }),
    'rubric asks for "rackside" version 7, but only "rackside" version 1 is here.',
  ],
  [
    'the 30th of February',
    (r) => (r.session.date = '2025-02-30'),
    'session.date is "2025-02-30", a day that no calendar has',
  ],
  ['the 29th of February in 1900', (r) => (r.session.date = '1900-02-29'), 'a day that no calendar has'],
];

it.each(contradictions)('refuses %s', (_name, spoil, sentence) => {
  expect(sentenceFor(spoilt(spoil))).toContain(sentence);
});

it('takes the 29th of February 2024', () => {
  expect(sentenceFor(spoilt((r) => (r.session.date = '2024-02-29')))).toBe('');
});

const shapes: readonly [string, (review: Loose) => void, string][] = [
  [
    'a tempo in words',
    (r) => (r.entries[0].plan.tempo = 'slow'),
    'entries[0].plan.tempo must be written like 3-1-X-0, but is the text "slow".',
  ],
  [
    'an id with a space',
    (r) => (r.entries[0].id = 'e 1'),
    'entries[0].id must be up to 64 letters, digits, dots, dashes or underscores, but is the text "e 1".',
  ],
  [
    'a time base of nothing',
    (r) => (r.entries[0].clips[0].facts.timeBase.denominator = 0),
    'entries[0].clips[0].facts.timeBase.denominator is 0, but must be 1 or more.',
  ],
  [
    'a wrong severity',
    (r) => (r.entries[0].flags[0].severity = 'sever'),
    'entries[0].flags[0].severity must be one of keep, prefer, adjust, correct, stop, but is the text "sever".',
  ],
  ['a missing part', (r) => delete r.trainee, 'trainee is missing: add it.'],
  ['a missing field', (r) => delete r.entries[0].flags[0].clip, 'entries[0].flags[0].clip is missing: add it.'],
  [
    'a field too many',
    (r) => (r.entries[0].clips[1].colour = 'red'),
    'entries[0].clips[1] has a field "colour" that the format doesn\'t know: take it out.',
  ],
  [
    'a text for a number',
    (r) => (r.entries[0].plan.reps = '5'),
    'entries[0].plan.reps must be a number, but is the text "5".',
  ],
  ['a number out of bounds', (r) => (r.entries[0].plan.sets = 0), 'entries[0].plan.sets is 0, but must be 1 or more.'],
  [
    'a broken number',
    (r) => (r.entries[0].plan.sets = 1.5),
    'entries[0].plan.sets must be a whole number, but is 1.5.',
  ],
  ['a list for an object', (r) => (r.trainee = []), 'trainee'],
  ['an object for a list', (r) => (r.entries = {}), 'entries must be a list, but is an object.'],
  [
    'an empty list of reps',
    (r) => (r.entries[0].flags[0].reps = []),
    'entries[0].flags[0].reps must not be an empty list: name at least one.',
  ],
  ['half a moment', (r) => (r.entries[0].flags[0].at = { frame: 3 }), 'entries[0].flags[0].at must be a moment'],
  ['a name of spaces', (r) => (r.trainee.name = '   '), 'trainee.name must not be empty.'],
  ['another format', (r) => (r.format = 'other'), 'format must be rackside-review, but is the text "other".'],
  [
    'a newer version',
    (r) => (r.version = 5),
    'version is 5, which is newer than this program: open the file with a newer one.',
  ],
  ['a version that never was', (r) => (r.version = 0), 'version must be one of 1, 2, 3, 4, but is 0.'],
  [
    'a place that is none',
    (r) => (r.trainee.equipment = 'moon'),
    'trainee.equipment must be a usual place to train (home, homeWithDumbbells, park, barAndBench, fullGym) or a list',
  ],
  [
    'a set of a listed plan without reps',
    (r) => (r.entries[0].plan = { sets: [{ reps: 8 }, { loadKg: 20 }] }),
    'entries[0].plan.sets[1].reps is missing: add it.',
  ],
  [
    'a load of a listed plan that is no number',
    (r) => (r.entries[0].plan = { sets: [{ reps: 8, loadKg: 'heavy' }] }),
    'entries[0].plan.sets[0].loadKg must be a number, but is the text "heavy".',
  ],
  [
    'a date in words',
    (r) => (r.session.date = 'yesterday'),
    'session.date must be a date such as 2025-03-09, but is the text "yesterday".',
  ],
];

it.each(shapes)('names the place of %s', (_name, spoil, sentence) => {
  expect(sentenceFor(spoilt(spoil))).toContain(sentence);
});
