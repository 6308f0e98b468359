import type { Backend } from '../../../electron/contract/backend.ts';
import type { Bridge } from '../../../electron/contract/bridge.ts';
import { mutate } from '../../../renderer/bridge/mutate.ts';
import { read } from '../../../renderer/bridge/read.ts';

const flag = { clipId: 'c', criterion: 'depth', weight: 'adjust', reps: 'set', frame: 1 } as const;

/** Never called: the compiler checks it, and complains where an expected error is missing. */
export function refusedByTheCompiler(bridge: Bridge, backend: Backend): void {
  void mutate('flags.add', flag);
  // @ts-expect-error An act is not read.
  void read('flags.add', flag);
  void read('review.get', { sessionId: 's' });
  // @ts-expect-error A read changes nothing.
  void mutate('review.get', { sessionId: 's' });
  void backend.ask('documents.write', { sessionId: 's', document: 'letter', format: 'pdf', path: '/letter.pdf' });
  // @ts-expect-error No screen names a path to write to.
  void bridge.ask('documents.write', { sessionId: 's', document: 'letter', format: 'pdf', path: '/letter.pdf' });
  // @ts-expect-error Nor does it by this door.
  void mutate('documents.write', { sessionId: 's', document: 'letter', format: 'pdf', path: '/letter.pdf' });
}
