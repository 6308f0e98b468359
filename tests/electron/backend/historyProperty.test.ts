import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openBackend } from '../../../electron/backend/backend.ts';
import { step, stepBetween, take, takeBetween } from './randomActs.ts';
import { appFolder, ask, copyOf, dump, hingeFile, preparedLibrary, squatFile } from './workbench.ts';

it('gives every earlier state back by undo, and every later one by redo, whatever was done', async () => {
  const { folder, sessionId } = await preparedLibrary([squatFile, hingeFile]);
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 30, size: 'max' }), async (steps) => {
      const copy = copyOf(folder);
      const backend = openBackend({ libraryFolder: copy, appFolder });
      const count = async () => (await ask(backend, 'history.list', { sessionId })).length;
      const states = [dump(copy)];
      let acts = await count();
      for (const one of steps) {
        await take(backend, sessionId, one);
        const now = await count();
        if (now > acts) states.push(dump(copy));
        else expect(dump(copy)).toBe(states.at(-1));
        acts = now;
      }
      for (const state of states.slice(0, -1).reverse()) {
        await ask(backend, 'history.undo', { sessionId });
        expect(dump(copy)).toBe(state);
      }
      for (const state of states.slice(1)) {
        await ask(backend, 'history.redo', { sessionId });
        expect(dump(copy)).toBe(state);
      }
      await backend.close();
    }),
    { numRuns: 25 },
  );
});

it('gives every earlier state of two sessions back, by undo in whichever of them was changed last', async () => {
  const { folder, sessionId, traineeId } = await preparedLibrary([squatFile, hingeFile]);
  const within = fc.record({ at: fc.nat({ max: 1 }), how: fc.constant('within'), one: step });
  const between = fc.record({ at: fc.nat({ max: 1 }), how: fc.constant('between'), one: stepBetween });
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.oneof(within, between), { minLength: 1, maxLength: 20, size: 'max' }),
      async (steps) => {
        const copy = copyOf(folder);
        const backend = openBackend({ libraryFolder: copy, appFolder });
        const { sessionId: otherId } = await ask(backend, 'sessions.add', {
          traineeId,
          title: 'B',
          date: '2026-03-04',
        });
        const both = [sessionId, otherId] as const;
        const undone = async (id: string): Promise<boolean> =>
          (await backend.ask('history.undo', { sessionId: id })).ok;
        const states = [dump(copy)];
        for (const { at, ...what } of steps) {
          const pair = at === 0 ? both : ([otherId, sessionId] as const);
          if (what.how === 'within') await take(backend, pair[0], what.one);
          else await takeBetween(backend, pair, what.one);
          if (dump(copy) !== states.at(-1)) states.push(dump(copy));
        }
        const taken: string[] = [];
        for (const state of states.slice(0, -1).reverse()) {
          const now = dump(copy);
          // An act of one session is refused by nobody; one of both is refused until what followed in the other is undone.
          for (const id of both) {
            if (!(await undone(id))) continue;
            if (dump(copy) === state) {
              taken.push(id);
              break;
            }
            // The other session had changed later: this state comes first there.
            await ask(backend, 'history.redo', { sessionId: id });
            expect(dump(copy)).toBe(now);
          }
          expect(dump(copy)).toBe(state);
        }
        const again = states.slice(1);
        for (const [index, id] of taken.reverse().entries()) {
          await ask(backend, 'history.redo', { sessionId: id });
          expect(dump(copy)).toBe(again[index]);
        }
        expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
        await backend.close();
      },
    ),
    { numRuns: 25 },
  );
});
