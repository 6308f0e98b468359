import { copyFileSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../../engine/grading/gradeSession.ts';
import { parseReview } from '../../../../engine/review/parseReview.ts';
import {
  appFolder,
  ask,
  backendOn,
  dump,
  jobEnd,
  newLibrary,
  refusal,
  squatFile,
  temporaryFolder,
} from '../workbench.ts';

const demoFile = path.join(appFolder, 'seeds/demo/session.json');

/** A small review of one squat clip, as a coach might write it by hand. */
function review(change: { clip?: object; flag?: object; session?: object; trainee?: object } = {}) {
  return {
    format: 'rackside-review',
    version: 4,
    voice: 'self',
    coach: 'Pell Marrow',
    trainee: { name: 'Ivo Lark', goal: 'strength', ...change.trainee },
    session: { date: '2026-02-03', title: 'By hand', ...change.session },
    entries: [
      {
        id: 'squat',
        exercise: 'back-squat',
        clips: [
          {
            id: 'one',
            name: 'Set one',
            path: 'squat-side.mp4',
            reps: [{ index: 1, start: { seconds: 0.81 }, end: { frame: 117, ticks: 59904 } }],
            ...change.clip,
          },
        ],
        flags: [
          { clip: 'one', criterion: 'depth', severity: 'correct', reps: [1], at: { seconds: 2.45 }, ...change.flag },
        ],
        ticks: [{ clip: 'one', criterion: 'barPath', reps: 'set' }],
      },
    ],
  };
}

function write(content: object | string): string {
  const folder = temporaryFolder();
  copyFileSync(squatFile, path.join(folder, 'squat-side.mp4'));
  const file = path.join(folder, 'review.json');
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  return file;
}

async function takeIn(content: object) {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const before = dump(folder);
  const { sessionId, jobId } = await ask(backend, 'reviews.import', { path: write(content) });
  return { folder, backend, before, sessionId, job: await jobEnd(backend, jobId) };
}

/** The equipment of trainee and session after a second file of the same trainee was taken in. */
async function equipmentAfter(first: object, second: object) {
  const { backend } = await takeIn(review(first));
  const { sessionId, jobId } = await ask(backend, 'reviews.import', { path: write(review(second)) });
  await jobEnd(backend, jobId);
  const { trainee, session } = (await ask(backend, 'review.get', { sessionId })).review;
  const trainees = await ask(backend, 'desk.trainees', {});
  return { trainees: trainees.length, trainee: trainee.equipment, session: session.equipment };
}

describe('the equipment of a review file', () => {
  const home = { trainee: { equipment: 'home' } };

  it('comes with its trainee', async () => {
    expect(await equipmentAfter(home, home)).toEqual({ trainees: 1, trainee: 'home', session: undefined });
  });

  it('is that of the day where the library knows the trainee with something else', async () => {
    const other = { trainee: { equipment: ['barbell', 'rack'] } };
    expect(await equipmentAfter(home, other)).toEqual({ trainees: 1, trainee: 'home', session: ['barbell', 'rack'] });
    expect(await equipmentAfter({}, home)).toEqual({ trainees: 1, trainee: undefined, session: 'home' });
  });

  it('is what the library knows where the file states none', async () => {
    expect(await equipmentAfter(home, {})).toEqual({ trainees: 1, trainee: 'home', session: undefined });
  });
});

describe('a review file taken in', () => {
  it('becomes a session, its seconds turned into the frames that show then', async () => {
    const { backend, sessionId, job } = await takeIn(review());
    expect(job).toMatchObject({ state: 'done', sessionId });
    const got = await ask(backend, 'review.get', { sessionId });
    expect(got.review).toMatchObject({
      voice: 'self',
      coach: 'Pell Marrow',
      trainee: { name: 'Ivo Lark', goal: 'strength', experience: 'experienced', units: 'kg', minor: false },
      session: { title: 'By hand', date: '2026-02-03' },
    });
    const [entry] = got.review.entries;
    // 30 frames a second: frame 24 shows from 0.800 s to 0.833 s, frame 73 from 2.433 s; 512 ticks a frame.
    expect(entry?.clips[0]?.reps).toEqual([
      { index: 1, start: { frame: 24, ticks: 24 * 512 }, end: { frame: 117, ticks: 117 * 512 } },
    ]);
    expect(entry?.flags[0]).toMatchObject({ at: { frame: 73, ticks: 73 * 512 }, reps: [1], severity: 'correct' });
    expect(entry?.ticks).toMatchObject([{ criterion: 'barPath', reps: 'set' }]);
    expect(got.media[0]?.ready).toBe(true);
    expect(got.history).toEqual({ undo: null, redo: null });
  });

  it('keeps grades set by hand, of the exercise and of the session', async () => {
    const override = { score: 88, reason: 'First heavy day after a long break.' };
    const given = review({ session: { override: { score: 70, reason: 'Half of it was on film.' } } });
    const entries = given.entries.map((entry) => ({ ...entry, override }));
    const { backend, sessionId } = await takeIn({ ...given, entries });
    const got = await ask(backend, 'review.get', { sessionId });
    expect(got.review.session.override).toEqual({ score: 70, reason: 'Half of it was on film.' });
    expect(got.review.entries[0]?.override).toEqual(override);
  });

  it('keeps facts alone where the footage is elsewhere, moments as they are', async () => {
    const { backend, sessionId, job } = await takeIn(review({ clip: { path: undefined } }));
    expect(job.state).toBe('done');
    const { review: got, media } = await ask(backend, 'review.get', { sessionId });
    expect(got.entries[0]?.flags[0]?.at).toEqual({ seconds: 2.45 });
    expect(media[0]).toMatchObject({ ready: false, trouble: { id: 'footageElsewhere', values: {} } });
    const clipId = got.entries[0]?.clips[0]?.id ?? '';
    const flag = { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', frame: 1 } as const;
    expect((await refusal(backend, 'flags.add', flag)).code).toBe('conflict');
    expect((await refusal(backend, 'clips.frameTable', { clipId })).code).toBe('not-found');
  });

  it.each([
    ['footage that is not there', { clip: { path: 'gone.mp4' } }, /gone\.mp4/],
    ['a text file for footage', { clip: { path: 'review.json' } }, /review\.json/],
    ['a moment beyond the footage', { flag: { at: { seconds: 99 } } }, /99\.000 s.*left out/],
    ['a frame at the wrong time', { flag: { at: { frame: 73, ticks: 1 } } }, /frame 73.*left out/],
    [
      'other footage than it was made on',
      {
        clip: {
          facts: {
            sha256: '0'.repeat(64),
            codec: 'h264',
            width: 854,
            height: 480,
            rotationDeg: 0,
            frames: 423,
            timeBase: { numerator: 1, denominator: 15360 },
            durationUs: 14_100_000,
          },
        },
      },
      /not the footage/,
    ],
  ])('is left out whole, with a sentence, when it names %s', async (_, change, sentence) => {
    const { folder, before, job } = await takeIn(review(change));
    expect(job).toMatchObject({ state: 'failed', sentence: expect.stringMatching(sentence) });
    expect(dump(folder)).toBe(before);
    expect([...readdirSync(path.join(folder, 'clips')), ...readdirSync(path.join(folder, 'pictures'))]).toEqual([]);
  });

  it('belongs to the same trainee as the last one of equal standing', async () => {
    const { backend } = await takeIn(review());
    const next = write(review({ clip: { path: undefined }, session: { date: '2026-02-10' } }));
    const { jobId } = await ask(backend, 'reviews.import', { path: next });
    await jobEnd(backend, jobId);
    const { sessions } = await ask(backend, 'desk.sessions', {});
    const trainees = await ask(backend, 'desk.trainees', {});
    expect([trainees.length, sessions.length]).toEqual([1, 2]);
  });
});

describe('a review file that names footage outside its folder', () => {
  const elsewhere = () => {
    const folder = temporaryFolder();
    const clip = path.join(folder, 'elsewhere.mp4');
    copyFileSync(squatFile, clip);
    return clip;
  };
  const named: readonly [string, (file: string, clip: string) => string][] = [
    ['by its whole path', (_, clip) => clip],
    ['by going up', (file, clip) => path.relative(path.dirname(file), clip)],
    [
      'by a link beside it',
      (file, clip) => {
        symlinkSync(clip, path.join(path.dirname(file), 'link.mp4'));
        return 'link.mp4';
      },
    ],
    [
      'through a linked folder',
      (file, clip) => {
        symlinkSync(path.dirname(clip), path.join(path.dirname(file), 'folder'));
        return 'folder/elsewhere.mp4';
      },
    ],
  ];

  it.each(named)('%s is refused with the path', async (_, nameOf) => {
    const folder = temporaryFolder();
    const backend = await newLibrary(folder);
    const before = dump(folder);
    const clip = elsewhere();
    const file = write('');
    writeFileSync(file, JSON.stringify(review({ clip: { path: nameOf(file, clip) } })));
    const { code, sentence } = await refusal(backend, 'reviews.import', { path: file });
    expect([code, sentence.includes(clip)]).toEqual(['conflict', true]);
    expect(await refusal(backend, 'reviews.import', { path: file, footageOutside: ['/other.mp4'] })).toMatchObject({
      code: 'conflict',
    });
    expect(await ask(backend, 'jobs.list', {})).toEqual([]);
    expect(dump(folder)).toBe(before);

    const outside = await ask(backend, 'reviews.footageOutside', { path: file });
    expect(outside).toEqual([clip]);
  });

  it('is imported with what was allowed', async () => {
    const backend = await newLibrary();
    const clip = elsewhere();
    const file = write(review({ clip: { path: clip } }));
    const outside = await ask(backend, 'reviews.footageOutside', { path: file });
    const { jobId } = await ask(backend, 'reviews.import', { path: file, footageOutside: outside });
    expect((await jobEnd(backend, jobId)).state).toBe('done');
  });

  it('is not asked about a link that stays in the folder, or about what is not there', async () => {
    const backend = await newLibrary();
    for (const name of ['link.mp4', 'gone.mp4', './squat-side.mp4', '..mp4']) {
      const file = write(review({ clip: { path: name } }));
      symlinkSync('squat-side.mp4', path.join(path.dirname(file), 'link.mp4'));
      expect(await ask(backend, 'reviews.footageOutside', { path: file })).toEqual([]);
    }
  });
});

/** Whose sessions the reviews are, taken into one library one after the other, and how those are called. */
async function ownersOf(names: readonly string[]) {
  const backend = await newLibrary();
  const owners: string[] = [];
  for (const name of names) {
    const content = review({ trainee: { name } });
    const entries = content.entries.map((entry) => ({ ...entry, clips: [], flags: [], ticks: [] }));
    const { sessionId, jobId } = await ask(backend, 'reviews.import', { path: write({ ...content, entries }) });
    await jobEnd(backend, jobId);
    owners.push((await ask(backend, 'desk.session', { sessionId }))?.traineeName ?? '');
  }
  return owners;
}

describe('the trainee of a review file', () => {
  it('is one person however the name is composed', async () => {
    const name = 'Zoë Nguyễn';
    const owners = await ownersOf([name, name.normalize('NFD'), name.toUpperCase()]);
    expect(owners).toEqual([name, name, name]);
  });

  it('is somebody of their own where no name is given', async () => {
    expect(await ownersOf(['Trainee', 'Trainee', 'T.', 'Trainee'])).toEqual([
      'Trainee',
      'Trainee 2',
      'T.',
      'Trainee 3',
    ]);
  });
});

describe('a file that is no review', () => {
  const inside = JSON.stringify(review());
  it.each([
    ['not there', '', 'not-found'],
    ['not JSON', '{"format": ', 'bad-review'],
    ['a list', '[]', 'bad-review'],
    ['too large', ' '.repeat(5_000_001), 'bad-review'],
    ['polluting prototypes', inside.replace('{', '{"__proto__": {"admin": true},'), 'bad-review'],
    ['naming an unknown criterion', inside.replace('"depth"', '"grip"'), 'bad-review'],
    ['naming a rep that is not there', inside.replace('"reps":[1]', '"reps":[9]'), 'bad-review'],
  ])('is refused at once when it is %s', async (what, content, code) => {
    const folder = temporaryFolder();
    const backend = await newLibrary(folder);
    const before = dump(folder);
    const file = what === 'not there' ? path.join(folder, 'gone.json') : write(content);
    const problem = await refusal(backend, 'reviews.import', { path: file });
    expect(problem.code).toBe(code);
    expect(problem.sentence).toMatch(/^[^\n]{10,400}\.$/);
    expect(dump(folder)).toBe(before);
    expect(await ask(backend, 'jobs.list', {})).toEqual([]);
  });

  it('is refused when it is not text', async () => {
    const backend = await newLibrary();
    const problem = await refusal(backend, 'reviews.import', { path: squatFile });
    expect(problem).toMatchObject({ code: 'bad-review', sentence: expect.stringMatching(/UTF-8/) });
  });
});

it('makes the demo of a new library, graded as its file says, in the voice of the library', async () => {
  const folder = temporaryFolder();
  const backend = backendOn(folder);
  const { jobId } = await ask(backend, 'library.create', { contents: 'demo', voice: 'self', coach: 'Ada Quill' });
  const job = await jobEnd(backend, jobId ?? '');
  expect(job).toMatchObject({ kind: 'demo', state: 'done', sessionId: expect.any(String) });
  const sessionId = job.sessionId ?? '';
  const catalogue = await ask(backend, 'catalogue.get', {});
  const file = parseReview(JSON.parse(readFileSync(demoFile, 'utf8')), catalogue);
  if (!file.ok) throw new Error(file.sentence);
  const ofFile = gradeSession(file.review, catalogue);
  const ofLibrary = await ask(backend, 'grade.get', { sessionId });
  expect(ofLibrary.state).toEqual(ofFile.state);
  const { review: got, media } = await ask(backend, 'review.get', { sessionId });
  expect([got.voice, got.coach]).toEqual(['self', 'Ada Quill']);
  expect(media.every((each) => each.ready && each.hasPoster)).toBe(true);
  const { sessions } = await ask(backend, 'desk.sessions', {});
  expect(sessions.map(({ date, traineeId }) => [date, traineeId === sessions[0]?.traineeId])).toEqual([
    ['2026-10-18', true],
    ['2026-10-04', true],
  ]);
});
