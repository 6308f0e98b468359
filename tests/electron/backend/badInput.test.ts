import fc from 'fast-check';
import * as v from 'valibot';
import { expect, it, vi } from 'vitest';
import { openBackend } from '../../../electron/backend/backend.ts';
import { problemSchema } from '../../../electron/contract/reply.ts';
import { type RequestName, requests } from '../../../electron/contract/requests.ts';
import { appFolder, dump, preparedLibrary } from './workbench.ts';

const names = Object.keys(requests) as RequestName[];

/** Hostile values: wrong types, not-a-numbers, long texts, prototypes, paths. */
const hostile = fc.oneof(
  fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true }),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -1, 1e300, '', '../..', "'; DROP TABLE flag; --", '\0'),
  fc.constant('x'.repeat(100_000)),
  fc.constant(JSON.parse('{"__proto__": {"admin": true}}')),
);

it('refuses bad params of every request with one sentence, and changes nothing', async () => {
  const stderr = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const { folder, sessionId, clipId, entryId } = await preparedLibrary();
  const before = dump(folder);
  const backend = openBackend({ libraryFolder: folder, appFolder });
  const real = { sessionId, clipId, entryId };
  for (const name of names) {
    const { params } = requests[name];
    const keys = Object.keys(params.entries);
    const mixed = fc.dictionary(
      fc.constantFrom(...keys, '__proto__', 'extra'),
      fc.oneof(hostile, fc.constantFrom(...Object.values(real))),
    );
    const bad = fc.oneof(hostile, mixed).filter((value) => !v.safeParse(params, value).success);
    await fc.assert(
      fc.asyncProperty(bad, async (value) => {
        const reply = await backend.ask(name, value as never);
        expect(reply.ok).toBe(false);
        if (reply.ok) return;
        expect(v.is(problemSchema, reply.problem)).toBe(true);
        expect(reply.problem.code).toBe('bad-request');
        expect(JSON.stringify(reply.problem).length).toBeLessThan(500);
      }),
      { numRuns: 40 },
    );
  }
  await backend.close();
  expect(dump(folder)).toBe(before);
  expect(stderr).not.toHaveBeenCalled();
  stderr.mockRestore();
});

it.each(['nothing.known', '__proto__', 'constructor', ''])(
  'refuses the request "%s", which does not exist',
  async (name) => {
    const backend = openBackend({ libraryFolder: '/nowhere/at/all', appFolder });
    const reply = await backend.ask(name as RequestName, {} as never);
    expect(reply).toMatchObject({ ok: false, problem: { code: 'bad-request' } });
    await backend.close();
  },
);

it('answers for things that are not there, whichever request names them', async () => {
  const { folder } = await preparedLibrary();
  const backend = openBackend({ libraryFolder: folder, appFolder });
  const gone = {
    sessionId: 'gone',
    clipId: 'gone',
    entryId: 'gone',
    flagId: 'gone',
    traineeId: 'gone',
    jobId: 'gone',
    drawingId: 'gone',
    coverId: 'gone',
    arrivalId: 'gone',
    arrivalIds: ['gone'],
  };
  const filled: Readonly<Record<string, unknown>> = {
    ...gone,
    into: 'gone',
    leadId: 'gone',
    after: 'opening',
    title: 'Legs',
    criterion: 'depth',
    severity: 'adjust',
    reps: 'set',
    frame: 1,
    rep: 1,
    edge: 'start',
    names: 'first',
    trainee: 'keep',
    fine: true,
    ticks: [{ criterion: 'depth', reps: 'set' }],
    what: 'poster',
    change: {},
    paths: ['/nowhere.mp4'],
    exercise: 'back-squat',
    date: '2026-03-04',
    firstId: 'gone',
    secondId: 'gone',
    name: 'review.json',
    text: '{}',
    override: null,
    drawn: { shape: 'text', points: [{ x: 1, y: 1 }], text: 'Here' },
    cover: { kind: 'head' },
    box: { leftPx: 1, topPx: 1, widthPx: 9, heightPx: 9 },
    version: 1,
    style: {},
    paragraph: 'opening',
    words: 'Well done.',
    document: 'letter',
    format: 'html',
    path: `${folder}/letter.html`,
    click: { frame: 1, what: 'disc', at: { xPx: 1, yPx: 1 } },
    suggestionId: 'gone',
    dismissed: true,
    offered: 1,
    section: null,
    cuts: [1],
  };
  const own: Partial<Record<RequestName, Readonly<Record<string, unknown>>>> = {
    'clips.move': { to: { kind: 'exercise', exercise: 'back-squat' } },
    'flags.copy': { to: [{ clipId: 'gone', reps: 'set', frame: 1 }] },
    'jobs.move': { to: 'first' },
    'measures.clearClicks': { what: 'disc' },
    'sessions.finish': { finished: true },
    'names.decide': { places: [{ place: 'notes', before: '', word: 'Mira', after: ' leans' }], is: 'name' },
  };
  for (const name of names) {
    const keys = Object.keys(requests[name].params.entries);
    if (!keys.some((key) => key in gone)) continue;
    const values = { ...filled, ...own[name] };
    const params = Object.fromEntries(keys.flatMap((key) => (key in values ? [[key, values[key]]] : [])));
    const reply = await backend.ask(name, params as never);
    expect([name, reply.ok ? 'ok' : reply.problem.code]).toEqual([name, 'not-found']);
  }
  await backend.close();
});
