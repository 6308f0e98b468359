import { openSync, writeSync } from 'node:fs';
import { openBackend } from '../../../electron/backend/backend.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { ask, jobsAtRest } from '../harness/ask.ts';
import type { Acknowledged, WorkOrder } from './workOrder.ts';

/** Works in a library, and writes down each thing once it was acknowledged. */
const order = JSON.parse(process.argv[2] ?? '') as WorkOrder;
const { library, out, acts, sessionId, clipId, emptySessionId, emptyEntryId, film } = order;
const notebook = openSync(order.notebook, 'w');
const acknowledge = (what: Acknowledged): void => void writeSync(notebook, `${JSON.stringify(what)}\n`);

const backend = openBackend({ libraryFolder: library, appFolder: rootFolder });

/** Waits until all jobs have ended, and throws what came in the way of one. */
async function jobsDone(): Promise<void> {
  const [failed] = (await jobsAtRest(backend)).filter(({ state }) => state !== 'done');
  if (failed !== undefined) throw new Error(`${failed.kind} ended: ${JSON.stringify(failed.message)}`);
}

for (let act = 0; act < acts; act += 1) {
  const note = `Act ${act}`;
  await ask(backend, 'flags.add', {
    clipId,
    criterion: 'depth',
    severity: 'adjust',
    reps: 'set',
    frame: act % 40,
    note,
  });
  acknowledge({ kind: 'flag', note });
  if (act % 3 === 0) {
    const notes = `After act ${act}`;
    await ask(backend, 'sessions.update', { sessionId, notes });
    acknowledge({ kind: 'notes', notes });
  }
}
await ask(backend, 'clips.import', { sessionId: emptySessionId, entryId: emptyEntryId, view: 'side', paths: [film] });
await jobsDone();
acknowledge({ kind: 'import' });
for (const zip of [false, true]) {
  await ask(backend, 'handover.start', {
    sessionIds: [sessionId],
    folder: out,
    options: { clips: false, originals: true, zip },
  });
  await jobsDone();
  acknowledge({ kind: 'handover' });
}
await backend.close();
