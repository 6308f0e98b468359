import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openBackend } from '../../../electron/backend/backend.ts';
import { step, take } from './randomActs.ts';
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
    { numRuns: 50 },
  );
});
